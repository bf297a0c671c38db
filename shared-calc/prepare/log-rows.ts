import { toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';

export interface LogFault {
  /** The row number in the text, from 1. */
  readonly row: number;
  readonly says: string;
}

export interface LogRow {
  readonly row: number;
  readonly fields: readonly string[];
}

/**
 * Rows of a typed or pasted log: fields separated by tabs, semicolons, spaces, or commas followed by a space. A row
 * without any of these is split at its commas: one figure alone is not a reading. Empty rows are ignored, and so is a
 * heading: a first row without a figure.
 */
export function logRows(text: string): readonly LogRow[] {
  return text
    .split(/\r\n|\r|\n/)
    .map((line, at) => ({ row: at + 1, fields: fieldsOf(line) }))
    .filter(({ fields }) => fields.length > 0)
    .filter(({ fields }, at) => at > 0 || fields.some((field) => /\d/.test(field)));
}

/** A figure with F behind it is read as what it is in degC; one without a unit is degC. */
const fahrenheit = /([+\-\u2212]?\d+(?:[.,]\d*)?)\s*(?:°\s*F|degF|F)(?=$|[\s,;])/gi;

function fieldsOf(line: string): readonly string[] {
  const metric = line.replaceAll(fahrenheit, (_, figure: string) => inCelsius(figure));
  const bare = metric.replaceAll(/(\d)\s*(?:°\s*C|degC|C|min|h|%)(?=$|[\s,;])/gi, '$1');
  const fields = partsOf(bare, /[\t;]+|,\s+|\s+/);
  return fields.length === 1 ? partsOf(bare, ',') : fields;
}

function inCelsius(figure: string): string {
  return String(cleanNoise(toBase(plainNumber(figure) ?? Number.NaN, unitOf('degF'))));
}

function partsOf(line: string, between: string | RegExp): readonly string[] {
  return line
    .split(between)
    .map((field) => field.trim())
    .filter((field) => field !== '');
}

/** A plain number with a point or a comma: `82.5`, `82,5`, `-3`; `undefined` for anything else. */
export function plainNumber(text: string): number | undefined {
  return /^[+\-\u2212]?(?:\d+(?:[.,]\d*)?|[.,]\d+)$/.test(text)
    ? Number(text.replace(',', '.').replace('\u2212', '-'))
    : undefined;
}

/** All rows, or the faults of those that cannot be read; all or none. */
export function allRead<T>(rows: readonly Result<T, LogFault>[]): Result<readonly T[], readonly LogFault[]> {
  const faults = rows.flatMap((row) => (row.ok ? [] : [row.fault]));
  return faults.length > 0 ? failed(faults) : ok(rows.flatMap((row) => (row.ok ? [row.value] : [])));
}
