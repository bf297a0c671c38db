import { missingWhats } from '#shared-calc/buy/missing.ts';
import { placeUses } from '#shared-calc/jobs/place-checks.ts';
import { checkStates } from '#shared-calc/bench/bench-types.ts';
import { sourceMarks } from '#shared-calc/fields/source.ts';
import { z } from 'zod';

/* The exact keys of each --json answer: programs that read them rely on that. */

const Money = z.string().regex(/^-?\d+\.\d{2}$/);
const Value = z.union([z.number(), z.string(), z.boolean()]);
const State = z.enum(['house', 'job', 'local', 'needs a figure', 'waiting', 'loop', 'issued']);
const Flags = z.array(z.enum(['out of range', 'old price']));
const Sentence = z.string().regex(/[.?!]$/);

const Warning = z.strictObject({ says: Sentence, decides: z.string().min(1) });
/** The id is null for what a house has written on a line itself. */
const Caution = z.strictObject({ id: z.string().nullable(), says: Sentence, decides: z.string(), source: z.string() });
export const Work = z.strictObject({
  value: Value,
  unit: z.string(),
  kind: z.string(),
  working: z.array(z.string()),
  warnings: z.array(Warning),
  cautions: z.array(Caution),
});
/** Where the house has a figure from, where it says so. */
const Source = z.strictObject({ from: z.enum(sourceMarks), note: z.string() }).optional();
const Plain = z.strictObject({
  value: Value,
  unit: z.string(),
  state: State,
  flags: Flags,
  rule: z.string(),
  source: Source,
  warnings: z.array(Warning),
});
const End = z.number().nullable();
const Probe = z.string().nullable();
/** A figure that a guess moves has the ends of its range, each with what gives it; null where a probe has no answer. */
const Known = z.union([Plain, Plain.extend({ from: End, to: End, fromBy: Probe, toBy: Probe })]);
const Unknown = z.strictObject({ ...Plain.shape, value: z.null(), fault: Sentence });
const Missing = z.strictObject({ what: z.enum(missingWhats), of: z.string(), label: z.string().min(1) });
/** Beside sums that are not whole, or rest on guesses. */
const Part = {
  atLeast: z.literal(true).optional(),
  missing: z.array(Missing).optional(),
  guesses: z.array(Missing.omit({ what: true })).optional(),
};
const Sums = z.strictObject({
  cost: Money,
  net: Money,
  tax: Money,
  gross: Money,
  deposit: Money,
  hours: z.number(),
  ...Part,
});
const OfLine = z.strictObject({
  line: z.string(),
  level: z.enum(['advice', 'watch', 'stop']),
  holds: z.boolean().nullable(),
  state: z.enum(checkStates),
  badIn: z.array(z.string()),
  says: Sentence,
  decides: z.string().min(1),
});
const OfPlace = z.strictObject({ ...OfLine.shape, use: z.enum(placeUses), line: z.null() });
const Check = z.union([OfLine, OfPlace]);
const ofSize = { size: z.string() };
const Column = {
  size: z.string(),
  tank: z.string(),
  recipe: z.string(),
  count: z.int(),
  lines: z.record(z.string(), z.union([Known, Unknown])),
  checks: z.array(Check),
  missing: z.array(
    z.strictObject({ what: z.literal('measure'), of: z.string(), label: z.string(), checks: z.array(z.string()) }),
  ),
};
export const Bench = z.strictObject({
  recipe: z.string(),
  columns: z.array(
    z.union([
      z.strictObject({ ...Column, sums: Sums }),
      z.strictObject({ ...Column, sums: z.null(), fault: Sentence }),
    ]),
  ),
  cautions: z.array(Caution),
});
export const Need = z.strictObject({
  material: z.string(),
  label: z.string(),
  group: z.string(),
  used: z.number(),
  unit: z.string(),
  onHand: z.number(),
  packs: z.array(z.strictObject({ size: z.number(), unit: z.string(), count: z.int(), each: Money })),
  cost: Money,
  packsCost: Money,
  leftOver: z.number(),
});
export const Needs = z.strictObject({
  needs: z.array(Need),
  total: Money,
  packsTotal: Money,
  landed: Money,
  ...Part,
  cautions: z.array(Caution),
});
const Better = z.strictObject({
  material: z.string(),
  label: z.string(),
  pack: z.strictObject({ size: z.number(), unit: z.string(), each: Money }),
  landedNow: Money,
  landedThen: Money,
});
const Offered = z.strictObject({
  supplier: z.string(),
  name: z.string(),
  packs: Need.shape.packs,
  coins: Money,
  landed: Money,
  taken: z.boolean(),
  secondBest: z.boolean(),
});
export const Run = z.strictObject({
  materials: z.array(
    z.strictObject({
      ...Need.shape,
      kept: z.record(z.string(), z.number()),
      keptOver: z.record(z.string(), z.number()),
      coming: z.number(),
      forStore: z.number(),
      aloneCost: Money,
      offers: z.array(Offered),
    }),
  ),
  suppliers: z.array(
    z.strictObject({
      supplier: z.string(),
      goods: Money,
      carriage: Money,
      shortOfMinimum: Money,
      better: Better.nullable(),
    }),
  ),
  together: Money,
  alone: Money,
  landedTogether: Money,
  landedAlone: Money,
  noSupplier: z.array(
    z.strictObject({ material: z.string(), label: z.string(), buy: z.number(), unit: z.string(), coins: Money }),
  ),
  proven: z.boolean(),
  ...Part,
  cautions: z.array(Caution),
});
export const Quote = z.strictObject({
  lines: z.array(
    z.strictObject({
      group: z.string(),
      label: z.string(),
      cost: Money,
      margin: z.number(),
      price: Money,
      taxClass: z.string(),
    }),
  ),
  cost: Money,
  net: Money,
  tax: z.record(z.string(), Money),
  gross: Money,
  deposit: Money,
  hours: z.number(),
  ...Part,
  cautions: z.array(Caution),
  checks: z.array(z.union([OfLine.extend(ofSize), OfPlace.extend(ofSize)])),
  against: z.array(z.strictObject({ what: z.string(), why: z.string() })),
});
export const Entry = z.strictObject({
  name: z.string(),
  title: z.string(),
  group: z.string(),
  call: z.string(),
  args: z.array(
    z.strictObject({
      name: z.string(),
      takes: z.string(),
      otherwise: z.union([z.number(), z.string()]).optional(),
      low: z.number().optional(),
      high: z.number().optional(),
      says: z.string().optional(),
    }),
  ),
  gives: z.string(),
  sum: z.string(),
  help: z.string(),
  examples: z.array(z.strictObject({ rule: z.string(), gives: z.string() })),
  source: z.string(),
  cautions: z.array(Caution),
  decides: z.string().optional(),
  inRules: z.boolean(),
});
export const BookCheck = z.strictObject({
  sound: z.boolean(),
  version: z.int(),
  revision: z.int(),
  counts: z.record(z.string(), z.int()),
  findings: z.array(z.string()),
});
export const Import = z.strictObject({
  tried: z.boolean(),
  taken: z.int(),
  prices: z.array(
    z.strictObject({
      row: z.int(),
      material: z.string(),
      pack: z.number(),
      unit: z.string(),
      from: z.iso.date(),
      price: Money,
      before: Money.nullable(),
    }),
  ),
  refused: z.array(z.strictObject({ row: z.int(), says: Sentence })),
});
