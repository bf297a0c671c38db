import { z } from 'zod';
import { checkStates } from '#shared-calc/bench/bench-types.ts';
import { checkLevels } from '#shared-calc/fields/recipe.ts';
import { saleWays } from '#shared-calc/fields/material.ts';
import { unasked } from '#shared-calc/fields/survey.ts';
import { schemaOf } from '#shared-calc/fields/field.ts';
import { sourceFields } from '#shared-calc/fields/source.ts';
import { recordKinds, type Line } from '#shared-calc/records/records.ts';
import { declaredOf } from '#shared-calc/fields/first-recipes.ts';
import { givers } from '#shared-calc/recipe/column.ts';
import { sortKeyAt } from '#shared-calc/records/sort-key.ts';
import { limitUses } from './place-checks.ts';
import { canonicalJson, type Plain } from './canonical-json.ts';

const Day = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);

const FrozenWritten = recordKinds.localValue.pick({ line: true, text: true, note: true, by: true });

const FrozenGiven = z.strictObject({
  line: z.string(),
  text: z.string(),
  from: z.enum(givers),
  /** Left out where the giver does not say, and in quotes from before figures had a source. */
  source: schemaOf(sourceFields).exactOptional(),
});

const FrozenCheck = z.strictObject({
  line: z.string(),
  level: z.enum(checkLevels),
  /** Left out if it was not known, or might not hold. */
  holds: z.boolean().exactOptional(),
  /** Both are left out of quotes from before guesses had ranges. */
  state: z.enum(checkStates).exactOptional(),
  badIn: z.array(z.string()).exactOptional(),
  says: z.string(),
  decides: z.string(),
});

const FrozenPlaceCheck = z.strictObject({
  use: z.enum(limitUses),
  level: z.enum(checkLevels),
  state: z.enum(checkStates),
  says: z.string(),
  decides: z.string(),
});

const FrozenColumn = z.strictObject({
  size: z.string(),
  key: z.string(),
  tank: recordKinds.tank,
  label: z.string(),
  count: z.int(),
  locals: z.array(FrozenWritten),
  /** What the survey and the kind of animal gave; left out if nothing. */
  given: z.array(FrozenGiven).exactOptional(),
  /** The value of every line, in the line's own unit; a line without a figure is left out. */
  figures: z.record(z.string(), z.union([z.number(), z.string(), z.boolean()])),
  checks: z.array(FrozenCheck),
  /** Its place in `houses`, counted from 1; left out where it is worked from `recipe` and `lines`. */
  house: z.int().min(1).exactOptional(),
  /** Left out of quotes from before places had a survey. */
  place: z.array(FrozenPlaceCheck).exactOptional(),
});

const FrozenGoods = z.strictObject({
  material: z.string(),
  label: z.string(),
  unit: z.string(),
  supplier: z.string().exactOptional(),
  sale: z.enum(saleWays),
  keeps: z.boolean(),
  packs: z.array(
    z.strictObject({
      id: z.string(),
      amount: z.number(),
      priceCoins: z.int(),
      from: Day,
      old: z.boolean(),
      /** Of what the quote does not need; left out if it is none. */
      guess: z.literal(true).exactOptional(),
    }),
  ),
});

const FrozenNeed = z.strictObject({
  material: z.string(),
  label: z.string(),
  group: z.string(),
  sale: z.enum(saleWays),
  used: z.number(),
  unit: z.string(),
  costCoins: z.int(),
  packsCoins: z.int(),
});

const FrozenSums = z.strictObject({
  lines: z.array(
    z.strictObject({
      group: z.string(),
      label: z.string(),
      costCoins: z.int(),
      reserveCoins: z.int(),
      margin: z.number(),
      priceCoins: z.int(),
      taxClass: z.string(),
    }),
  ),
  costCoins: z.int(),
  netCoins: z.int(),
  tax: z.array(
    z.strictObject({
      taxClass: z.string(),
      label: z.string(),
      share: z.number(),
      netCoins: z.int(),
      coins: z.int(),
    }),
  ),
  grossCoins: z.int(),
  depositCoins: z.int(),
  hours: z.number(),
  /** Left out where all hours are the builder's. */
  people: z
    .array(z.strictObject({ who: z.string().exactOptional(), label: z.string(), hours: z.number() }))
    .exactOptional(),
});

/**
 * All inputs and results of an issued quote. `form` increases when these fields change, so that older quotes are still
 * parsed in their own form.
 */
export const QuoteBody = z.strictObject({
  form: z.literal(3),
  number: z.string(),
  revision: z.string(),
  issuedOn: Day,
  /** The day of its prices. */
  pricesOn: Day,
  validUntil: Day,
  /** The job at issue; none for a quote over sizes alone. */
  job: recordKinds.job.exactOptional(),
  basis: z.enum(['used', 'packs']),
  recipe: recordKinds.recipe,
  lines: z.array(recordKinds.line),
  /** Cells written over for the whole job. */
  whole: z.array(FrozenWritten),
  columns: z.array(FrozenColumn),
  oneOffs: z.array(recordKinds.quoteLine),
  workshop: recordKinds.workshop,
  rates: z.array(recordKinds.rate),
  margins: z.array(recordKinds.margin),
  taxClasses: z.array(recordKinds.taxClass),
  suppliers: z.array(recordKinds.supplier),
  /** All goods that the recipe can need, and every tank, with the prices of that day. */
  goods: z.array(FrozenGoods),
  needs: z.array(FrozenNeed),
  sums: FrozenSums,
  /** What the client was promised for plants that die; `null` is no promise. Left out of quotes issued before a workshop said it. */
  plantsReplacedDays: z.int().nullable().exactOptional(),
  /** General cautions for the client; left out of quotes from before there was a table of them. */
  cautions: z.array(z.strictObject({ says: z.string(), decides: z.string() })).exactOptional(),
  /** House changes that its lines have; left out if none, and in quotes from before houses kept a log. */
  changes: z.array(z.string()).exactOptional(),
  /** The recipes and lines of sizes that have others; left out where all sizes have the same. */
  houses: z.array(z.strictObject({ recipe: recordKinds.recipe, lines: z.array(recordKinds.line) })).exactOptional(),
});

export type QuoteBody = z.infer<typeof QuoteBody>;
export type FrozenColumn = z.infer<typeof FrozenColumn>;
export type FrozenWritten = z.infer<typeof FrozenWritten>;

/** The recipes and lines of a body: the usual ones first, then in the order that its columns name them by. */
export function frozenHouses({ recipe, lines, houses = [] }: Pick<QuoteBody, 'recipe' | 'lines' | 'houses'>) {
  return [{ recipe, lines }, ...houses];
}

/** The lines that a column of a body was worked from. */
export function frozenLines(
  { lines, houses = [] }: Pick<QuoteBody, 'lines' | 'houses'>,
  { house }: Pick<FrozenColumn, 'house'>,
): readonly Line[] {
  return (house === undefined ? undefined : houses[house - 1]?.lines) ?? lines;
}

/** The body as it is stored and hashed. */
export function writeQuoteBody(body: QuoteBody): string {
  return canonicalJson(body satisfies Plain);
}

/** A body from before a job's survey had its questions: the way in was a figure of the job. */
const SecondBody = z.strictObject({
  ...QuoteBody.shape,
  form: z.literal(2),
  job: z
    .strictObject({ ...recordKinds.job.omit({ survey: true }).shape, narrowestMm: z.number().exactOptional() })
    .exactOptional(),
});

/** A body from before lines had uses. */
const FirstBody = z.strictObject({
  ...SecondBody.shape,
  form: z.literal(1),
  lines: z.array(
    z.strictObject({
      ...recordKinds.line.omit({ use: true, as: true, place: true, part: true, cures: true }).shape,
      order: z.number(),
    }),
  ),
});

const AnyBody = z.discriminatedUnion('form', [QuoteBody, SecondBody, FirstBody]);

/** Parses a stored body; `undefined` if no issue of this program wrote it. */
export function readQuoteBody(text: string): QuoteBody | undefined {
  try {
    const body = AnyBody.safeParse(JSON.parse(text)).data;
    if (!body || body.form === 3) return body;
    return withSurvey(body.form === 1 ? withUses(body) : body);
  } catch {
    return undefined;
  }
}

/** The list order gives the order of its lines. */
function withUses({ lines, ...body }: z.infer<typeof FirstBody>): z.infer<typeof SecondBody> {
  return {
    ...body,
    form: 2,
    lines: lines.map((line, at) => ({ ...line, order: sortKeyAt(at + 1), ...declaredOf(line) })),
  };
}

/** What nobody asked in those days is not asked. */
function withSurvey({ job, ...body }: z.infer<typeof SecondBody>): QuoteBody {
  if (!job) return { ...body, form: 3 };
  const { narrowestMm = null, ...rest } = job;
  return { ...body, form: 3, job: { ...rest, survey: { ...unasked, narrowestMm } } };
}
