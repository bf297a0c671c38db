import type { Field, FieldKind } from '#shared-calc/fields/field.ts';
import { fieldsOf } from '#shared-calc/fields/record-fields.ts';
import { entryOfCoins, showCoins } from '#shared-calc/quantity/coins-text.ts';
import { shownUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { fromBase, toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { cleanNoise, writeFigure, writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { EntryFault } from '#shared-calc/read/entry-fault.ts';
import { writeDay } from '#shared-calc/calendar/write-day.ts';
import { readChoice, type Option } from '#shared-calc/read/read-choice.ts';
import { readDay } from '#shared-calc/read/read-day.ts';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import { readMoney } from '#shared-calc/read/read-money.ts';
import { readSeason, writeSeason } from '#shared-calc/read/read-season.ts';
import { readWeekdays, writeWeekdays } from '#shared-calc/read/read-weekdays.ts';
import { readYesNo } from '#shared-calc/read/read-yes-no.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { RecordKind, Records, Workshop } from './records.ts';

/** A book at one moment, to show and parse fields. */
export interface FieldContext {
  readonly records: Records;
  readonly workshop: Workshop;
  readonly display: Display;
  /** `YYYY-MM-DD`; left out for a list from a file, where the word `today` is not allowed. */
  readonly today?: string;
}

/** The unit that a field's figures are shown and typed in; empty if it is not a figure. */
export function unitOfField({ kind, unit = '', shown, per }: Field, display: Display): string {
  if (kind === 'money') return 'money';
  if (per !== undefined) return `money/${per}`;
  if (kind !== 'figure' && kind !== 'count') return '';
  if (shown !== undefined) return typeof shown === 'string' ? shown : shown(display);
  return kind === 'count' ? unit : shownUnit(unit, display);
}

/** The options of a field that is one of some words. */
export function optionsOf(field: Field, records: Records): readonly Option[] {
  if (field.kind === 'yes no') return yesOrNo;
  return field.options ?? (field.refers ?? []).flatMap((kind) => recordOptions(records, kind));
}

const yesOrNo: readonly Option[] = ['yes', 'no'].map((word) => ({ value: word, label: word }));

/** Records of a kind by name, which is the first of their words but a note; by code if that is empty. */
function recordOptions(records: Records, kind: RecordKind): readonly Option[] {
  const key = fieldsOf(kind).find(([field, { kind: of }]) => of === 'words' && field !== 'note')?.[0] ?? '';
  const options: Option[] = [];
  for (const record of records[kind].values()) {
    const label = valueOf(record, key);
    options.push({ value: record.id, label: typeof label === 'string' && label !== '' ? label : record.id });
  }
  return options;
}

/** The value of a field of a record. */
export function valueOf(record: object, key: string): unknown {
  return Object.entries(record).find(([each]) => each === key)?.[1];
}

/** A value as shown, without its unit; empty if there is none. */
export function showField(field: Field, value: unknown, context: FieldContext): string {
  if (value === undefined) return field.empty ?? '';
  if (typeof value === 'number' && field.kind === 'money') return showCoins(value, context.workshop);
  if (typeof value === 'number') return showNumber(value, field, context.display);
  return wordsOf(field, value, context);
}

/** A value as a person would type it. */
export function entryOfField(field: Field, value: unknown, context: FieldContext): string {
  if (typeof value === 'number' && field.kind === 'money') return entryOfCoins(value, context.workshop);
  if (typeof value !== 'number') return value === undefined ? '' : wordsOf(field, value, context);
  const text = String(typedFigure(value, figureUnits(field, context.display)));
  return context.workshop.decimalComma ? text.replace('.', ',') : text;
}

function wordsOf(field: Field, value: unknown, { records, display }: FieldContext): string {
  if (field.kind === 'weekdays') return writeWeekdays(weekdaysIn(value));
  if (field.kind === 'season') return seasonIn(value);
  if (field.kind === 'day' && typeof value === 'string') return writeDay(value, display.dateOrder);
  const word = value === true ? 'yes' : value === false ? 'no' : typeof value === 'string' ? value : '';
  return optionsOf(field, records).find((option) => option.value === word)?.label ?? word;
}

function weekdaysIn(value: unknown): readonly number[] {
  return Array.isArray(value) ? value.filter((day) => typeof day === 'number') : [];
}

function seasonIn(value: unknown): string {
  const ends = typeof value === 'object' && value !== null ? [valueOf(value, 'from'), valueOf(value, 'to')] : [];
  const [from, to] = ends;
  return typeof from === 'string' && typeof to === 'string' ? writeSeason({ from, to }) : '';
}

interface FigureUnits {
  readonly stored: string;
  readonly shown: string;
}

function figureUnits(field: Field, display: Display): FigureUnits {
  const { unit: stored = 'number', per } = field;
  return { stored, shown: per === undefined ? unitOfField(field, display) : stored };
}

/** Unrounded up to four decimals; with more, rounded to the decimals of the shown unit. */
function showNumber(value: number, field: Field, display: Display): string {
  const units = figureUnits(field, display);
  const own = inShown(value, units);
  const decimals = String(own).split('.')[1]?.length ?? 0;
  if (decimals > 4) return writeFigure(toBase(value, unitOf(units.stored)), units.shown, display);
  return writeNumber(own, decimals, { decimalComma: display.decimalComma ?? false, group: units.shown !== 'mm' });
}

function inShown(value: number, { stored, shown }: FigureUnits): number {
  return stored === shown ? value : cleanNoise(fromBase(toBase(value, unitOf(stored)), unitOf(shown)));
}

/** The shortest figure in the shown unit that parses back to the stored value. */
function typedFigure(value: number, units: FigureUnits): number {
  const { stored, shown } = units;
  if (stored === shown) return value;
  const exact = fromBase(toBase(value, unitOf(stored)), unitOf(shown));
  const readBack = (figure: number) => cleanNoise(fromBase(toBase(figure, unitOf(shown)), unitOf(stored)));
  const short = cleanNoise(exact);
  return readBack(short) === value ? short : Number(exact.toPrecision(15));
}

/** The value of a text for a field; `undefined` if the text is empty. */
export function parseField(field: Field, text: string, context: FieldContext): Result<unknown, EntryFault> {
  if (field.mayBeEmpty && ['', field.empty].includes(text.trim())) return ok(undefined);
  return parsers[field.kind]({ field, name: field.called ?? field.heading, text, context });
}

interface Entry {
  readonly field: Field;
  readonly name: string;
  readonly text: string;
  readonly context: FieldContext;
}

const parsers: Readonly<Record<FieldKind, (entry: Entry) => Result<unknown, EntryFault>>> = {
  code: parseWords,
  words: parseWords,
  data: parseWords,
  choice: parseOption,
  reference: parseOption,
  'yes no': ({ text, name }) => readYesNo(text, name),
  day: ({ field, text, name, context }) => readDay(text, name, { ...context, nearest: field.past === true }),
  weekdays: ({ text, name }) => readWeekdays(text, name),
  season: ({ text, name }) => readSeason(text, name),
  money: parseMoney,
  count: parseFigure,
  figure: parseFigure,
};

function parseOption({ field, text, name, context }: Entry): Result<string, EntryFault> {
  return readChoice(text, name, optionsOf(field, context.records));
}

function parseFigure({ field, text, name, context }: Entry): Result<number | undefined, EntryFault> {
  const { low, high, kind } = field;
  const measure = { name, ...figureUnits(field, context.display), low, high, whole: kind === 'count' };
  return readMeasure(text, measure, context.workshop);
}

function parseMoney({ field: { low }, text, name, context }: Entry): Result<number, EntryFault> {
  const coins = readMoney(text, context.workshop, name);
  if (!coins.ok || low === undefined || coins.value >= low) return coins;
  return failed({ kind: 'too-low', name, value: coins.value, low, unit: 'coin' });
}

function parseWords({ field, text, name }: Entry): Result<string, EntryFault> {
  const { lines, needed, form } = field;
  const words = lines ? text.trimEnd() : text.replaceAll(/\s*\n\s*/g, ' ').trim();
  if (needed && words === '') return failed({ kind: 'empty', name, wants: 'word' });
  return form && !form.pattern.test(words) ? failed({ kind: 'other-form', name, says: form.says }) : ok(words);
}
