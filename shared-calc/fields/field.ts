import { z } from 'zod';

import { YEAR_DAY } from '#shared-calc/calendar/season.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { unitWords } from '#shared-calc/quantity/unit-words.ts';
import type { Option } from '#shared-calc/read/read-choice.ts';
import type { KindName } from './kind-names.ts';

export type FieldKind =
  | 'code'
  | 'words'
  | 'choice'
  | 'yes no'
  | 'day'
  | 'money'
  | 'count'
  | 'figure'
  | 'reference'
  | 'weekdays'
  | 'season'
  | 'data';

/** One field of a record kind: the only source of everything that is derived from it. */
export interface Field<S extends z.ZodType = z.ZodType> {
  readonly kind: FieldKind;
  readonly schema: S;
  readonly mayBeEmpty: boolean;
  /** The name in a book's column, an entry and the label of an edit. */
  readonly heading: string;
  /** The name at the start of a sentence, if the heading is too short or too long. */
  readonly called?: string;
  /** Heading in a CSV list, if lists have the field. */
  readonly list?: string;
  readonly help?: string;
  /** Unit of the stored figure. */
  readonly unit?: string;
  /** Unit it is shown and typed in; if left out, the workshop's choice for figures and `unit` for counts. */
  readonly shown?: string | ((display: Display) => string);
  /** The unit that an amount of money is for: `kWh`. */
  readonly per?: string;
  /** Bounds of what a person may write, in `unit` or coins; the schema also accepts what older books have. */
  readonly low?: number;
  readonly high?: number;
  readonly options?: readonly Option[];
  /** Words that may not be empty. */
  readonly needed?: boolean;
  /** A day of something that was done: without its year it is the nearest, not the next. */
  readonly past?: boolean;
  /** Text with line breaks. */
  readonly lines?: boolean;
  /** The most letters of a text. */
  readonly longest?: number;
  /** The pattern of a text that a person may write, and the words for it. */
  readonly form?: { readonly pattern: RegExp; readonly says: string };
  /** Shown while there is no value. */
  readonly empty?: string;
  /** Value in a new record, if it is not the default of its kind. */
  readonly fresh?: unknown;
  /** The named record must be of one of these kinds. */
  readonly refers?: readonly KindName[];
}

type About = Omit<Partial<Field>, 'kind' | 'schema' | 'mayBeEmpty' | 'heading' | 'options' | 'refers'>;

const Id = z.string().min(1).max(120);
const Day = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
const YearDay = z.string().regex(YEAR_DAY);
const Season = z.strictObject({ from: YearDay, to: YearDay });

function field<S extends z.ZodType>(kind: FieldKind, schema: S, heading: string, about: About = {}): Field<S> {
  return { kind, schema, mayBeEmpty: false, heading, ...about };
}

/** The code of the record itself, or a code whose record need not be in the book. */
export const code = (heading = 'Code', about?: About) => field('code', Id, heading, about);
export const words = (heading: string, about?: About) => textOf(2_000, heading, about);
export const longText = (heading: string, about?: About) => textOf(10_000, heading, { lines: true, ...about });
export const name = (heading: string, about?: About) => textOf(60, heading, about);
const textOf = (longest: number, heading: string, about?: About) =>
  field('words', z.string().max(longest), heading, { longest, ...about });
/** Text whose form only its own schema checks. */
export const textAs = <S extends z.ZodType<string>>(heading: string, schema: S, about?: About) =>
  field('words', schema, heading, about);
/** One of some words; `labels` are the words whose shown form differs from the stored one. */
export function choice<const T extends readonly string[]>(
  heading: string,
  choices: T,
  { labels = {}, ...about }: About & { readonly labels?: { readonly [W in T[number]]?: string } } = {},
) {
  const options = choices.map((value: T[number]) => ({ value, label: labels[value] ?? value }));
  return { ...field('choice', z.enum(choices), heading, about), options };
}

/** One of some units; a book keeps any unit that it already has. */
export const unitChoice = (heading: string, units: readonly string[], about?: About) => ({
  ...field('choice', z.string(), heading, about),
  options: units.map((value) => ({ value, label: unitWords(value, '') || value })),
});

export const yesNo = (heading: string, about?: About) => field('yes no', z.boolean(), heading, about);
export const day = (heading: string, about?: About) => field('day', Day, heading, about);
/** Whole coins. */
export const money = (heading: string, about?: About) => field('money', z.int(), heading, about);
export const figure = (heading: string, unit: string, about?: About) =>
  field('figure', z.number(), heading, { unit, ...about });
/** A share of 1: 0.12 for 12 %. */
export const share = (heading: string, about?: About) =>
  field('figure', z.number().min(0).max(1), heading, { unit: 'share', shown: '%', low: 0, high: 1, ...about });
export const count = (heading: string, about?: About) => field('count', z.int(), heading, { unit: 'each', ...about });
/** Weekdays, 1 Monday to 7 Sunday. */
export const weekdays = (heading: string, about?: About) =>
  field('weekdays', z.array(z.int().min(1).max(7)), heading, about);
/** The part of each year in which something is to be had. */
export const season = (heading: string, about?: About) => field('season', Season, heading, about);
export const data = <S extends z.ZodType>(heading: string, schema: S, about?: About) =>
  field('data', schema, heading, about);

export function reference(heading: string, refers: readonly KindName[], about?: About): Field<typeof Id> {
  return { ...field('reference', Id, heading, about), refers };
}

/** The same field with a narrower schema. */
export function within<S extends z.ZodType, T extends S>(one: Field<S>, schema: (wide: S) => T): Field<T> {
  return { ...one, schema: schema(one.schema) };
}

/** The same field, optional. */
export function orEmpty<S extends z.ZodType>(one: Field<S>): Field<z.ZodOptional<S>> {
  return { ...one, schema: one.schema.optional(), mayBeEmpty: true };
}

export type Fields = Readonly<Record<string, Field>>;
type ShapeOf<F extends Fields> = { -readonly [K in keyof F]: F[K]['schema'] };

/** The strict schema of records with these fields. */
export function schemaOf<F extends Fields>(fields: F): z.ZodObject<ShapeOf<F>, z.core.$strict> {
  const shape = Object.fromEntries(Object.entries(fields).map(([key, { schema }]) => [key, schema]));
  return z.strictObject(shape as ShapeOf<F>);
}
