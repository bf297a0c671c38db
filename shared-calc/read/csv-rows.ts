import Papa from 'papaparse';

/** What is wrong with a list before any field is read. */
export type CsvFault =
  | { readonly kind: 'heading-lacks'; readonly names: readonly string[] }
  | { readonly kind: 'row-length'; readonly has: number; readonly wants: number };

export interface BadRow<F> {
  /** The row number in the file: the heading is row 1. */
  readonly row: number;
  readonly fault: F;
}

export interface CsvRow {
  readonly row: number;
  readonly fields: Readonly<Record<string, string>>;
}

/**
 * Parses CSV text with a heading, every field as text; separated by comma, semicolon or tab, with or without a
 * byte-order mark. Refuses a heading that lacks a required field.
 */
export function readCsv(
  text: string,
  wanted: readonly string[],
): { readonly rows: readonly CsvRow[]; readonly refused: readonly BadRow<CsvFault>[] } {
  const parsed = Papa.parse<string[]>(text.replace(/^\ufeff/, ''), { delimitersToGuess: [',', ';', '\t'] });
  const [head = [], ...body] = parsed.data;
  const names = head.map((name) => name.trim().toLowerCase());
  const lacking = wanted.filter((name) => !names.includes(name));
  if (lacking.length > 0) {
    return { rows: [], refused: [{ row: 1, fault: { kind: 'heading-lacks', names: lacking } }] };
  }
  const rows: CsvRow[] = [];
  const refused: BadRow<CsvFault>[] = [];
  for (const [at, values] of body.entries()) {
    if (values.every((value) => value.trim() === '')) continue;
    const row = at + 2;
    if (values.length === names.length) rows.push({ row, fields: fieldsOf(names, values) });
    else refused.push({ row, fault: { kind: 'row-length', has: values.length, wants: names.length } });
  }
  return { rows, refused };
}

function fieldsOf(names: readonly string[], values: readonly string[]): Readonly<Record<string, string>> {
  return Object.fromEntries(names.map((name, at) => [name, (values[at] ?? '').trim().replace(/^'(?=[=+\-@])/, '')]));
}
