import { z } from 'zod';

import { checkParts, cureNames, linePlaces, lineTagNames, useNames } from '#shared-calc/fields/uses.ts';

import { sortKeyPattern } from './sort-key.ts';
import { WorkshopSchema } from './workshop-schema.ts';

/*
 * The records of a book. Units are in the field's name wherever a bare number stands (`insideLengthMm`);
 * money is whole coins (`priceCoins`); a share is 0.12 for 12 %; a day is `YYYY-MM-DD`.
 */

const Id = z.string().min(1).max(120);
const Words = z.string().max(2_000);
const Day = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
const Coins = z.int();
const Share = z.number().min(0).max(1);
const Text = z.string().max(10_000);

export const Supplier = z.strictObject({
  id: Id,
  name: Words,
  sells: Words,
  leadDays: z.int().min(0),
  /** Working days for tanks, where they take longer than the rest. */
  tankLeadDays: z.int().min(0).optional(),
  carriageCoins: Coins,
  /** Goods worth this much travel free. */
  freeFromCoins: Coins.optional(),
  minimumCoins: Coins.optional(),
  /** 1 Monday to 7 Sunday; none given: any open day. */
  deliveryWeekdays: z.array(z.int().min(1).max(7)).optional(),
  note: Words,
});

export const tankShapes = ['rectangle', 'bow', 'corner', 'hexagon', 'cylinder'] as const;

export const Tank = z.strictObject({
  id: Id,
  label: Words,
  shape: z.enum(tankShapes),
  /** Left out while nobody has measured it. */
  insideLengthMm: z.number().optional(),
  insideDepthMm: z.number().optional(),
  insideHeightMm: z.number().optional(),
  frontBowMm: z.number().optional(),
  sideReturnMm: z.number().optional(),
  damHeightMm: z.number().optional(),
  frontVentMm: z.number().optional(),
  glassMm: z.number().optional(),
  baseGlassMm: z.number().optional(),
  supplier: Id.optional(),
  clientsOwn: z.boolean(),
  note: Words,
});

export const saleWays = ['packs', 'cut', 'own'] as const;

export const Material = z.strictObject({
  id: Id,
  label: Words,
  /** The unit it is needed and sold in. */
  unit: z.string(),
  supplier: Id.optional(),
  /** `packs`: whole packs; `cut`: cut to the size asked, priced by the unit, never in packs; `own`: from the back room or the van, never in a shopping run. */
  sale: z.enum(saleWays),
  /** Left-overs keep for the next job. */
  keeps: z.boolean(),
  /** Working days, where they differ from the supplier's. */
  leadDays: z.int().min(0).optional(),
  note: Words,
});

export const Pack = z.strictObject({ id: Id, material: Id, amount: z.number() });

export const PackPrice = z.strictObject({ id: Id, pack: Id, from: Day, priceCoins: Coins });

export const plantClasses = ['ground', 'mid', 'feature', 'climber', 'epiphyte'] as const;

export const Plant = z.strictObject({
  id: Id,
  name: Words,
  class: z.enum(plantClasses),
  widthNowCm: z.number(),
  widthLaterCm: z.number(),
  lightLow: z.number(),
  lightHigh: z.number(),
  priceCoins: Coins,
  /** For dry tanks only. */
  dry: z.boolean(),
  /** Sap, oxalates and the like, in words; empty where nothing is known. */
  harm: Words,
  /** Least floor in m2, 0 for any. */
  leastFloorM2: z.number(),
  note: Words,
});

export const CultureKind = z.strictObject({
  id: Id,
  label: Words,
  breeding: z.enum(['females only', 'two sexes']),
  /** Share a day; left out for flies. */
  ratePerDay: z.number().optional(),
  tubL: z.number(),
  capacity: z.int(),
  harvestShare: z.number(),
  harvestEveryDays: z.int(),
  yield: z.int(),
  firstHarvestDays: z.int(),
  productiveDays: z.int().optional(),
  lowestC: z.number(),
  highestC: z.number(),
  founders: z.int(),
  foundersNewLine: z.int(),
  note: Words,
});

export const Rate = z.strictObject({
  id: Id,
  label: Words,
  coins: Coins,
  per: z.enum(['h', 'km']),
});

export const Margin = z.strictObject({ id: Id, label: Words, share: z.number(), taxClass: Id, order: z.int() });

export const TaxClass = z.strictObject({ id: Id, label: Words, share: Share });

export const ClosedDay = z.strictObject({ id: Id, from: Day, to: Day, label: Words });

export const Recipe = z.strictObject({ id: Id, title: Words, note: Words });

export const lineRoles = ['tank', 'given', 'worked', 'need', 'work', 'check'] as const;
export const checkLevels = ['advice', 'watch', 'stop'] as const;

export const Line = z.strictObject({
  id: Id,
  recipe: Id,
  /** Where it stands in the recipe's list: a text that sorts. */
  order: z.string().regex(sortKeyPattern),
  section: Words,
  name: z.string().max(60),
  /** In words, where the name in words does not serve. */
  label: Words.optional(),
  role: z.enum(lineRoles),
  /** Unit shown, or `choice`, `yes_no`, `each`, `number`, `money`. */
  unit: z.string(),
  /** The house's figure or rule as written; empty while it has none. A choice is its bare word. */
  text: Text,
  /** Words that a choice may take. */
  options: z.array(z.string()).optional(),
  note: Words,
  /** Bounds as figures in the line's unit. */
  low: z.number().optional(),
  high: z.number().optional(),
  shownFirst: z.boolean(),
  /** Set in under the line before it. */
  inset: z.boolean(),
  /** `need`: a material's id, `TANK` for the column's own tank. */
  material: Id.optional(),
  /** `need`: the quote group, a margin's id. */
  group: Id.optional(),
  /** `work`: the task's id. */
  task: Id.optional(),
  /** Worked once for a job, from the column where it is largest. */
  perJob: z.boolean(),
  level: z.enum(checkLevels).optional(),
  says: Words.optional(),
  decides: Words.optional(),
  caution: Words.optional(),
  /** What the program itself reads it for. */
  use: z.enum(useNames).optional(),
  /** The sets of lines it belongs to. */
  as: z.array(z.enum(lineTagNames)).optional(),
  place: z.enum(linePlaces).optional(),
  /** `check`: the part of the sheet of checks, and what may cure it, the likeliest first. */
  part: z.enum(checkParts).optional(),
  cures: z.array(z.enum(cureNames)).optional(),
});

export const jobStates = [
  'enquiry',
  'surveyed',
  'quoted',
  'accepted',
  'deposit in',
  'ordered',
  'in quarantine',
  'ready to build',
  'built',
  'watching',
  'handed over',
  'in service',
  'closed',
] as const;

export const Job = z.strictObject({
  id: Id,
  title: Words,
  client: Words,
  contact: Words,
  recipe: Id,
  state: z.enum(jobStates),
  site: Words,
  access: Words,
  /** The narrowest place on the way in, as measured there. */
  narrowestMm: z.number().min(0).optional(),
  audience: Words,
  animals: Words,
  area: Words,
  enquiredOn: Day.optional(),
  handover: Day.optional(),
  depositCoins: Coins.optional(),
  depositOn: Day.optional(),
  basis: z.enum(['used', 'packs']),
  nextAct: Words,
  nextOn: Day.optional(),
  note: Text,
});

/** A column of a job's size bench. */
export const Size = z.strictObject({
  id: Id,
  job: Id,
  tank: Id,
  order: z.number(),
  label: Words,
  count: z.int().min(1).max(999),
});

/** A box written over: for one size, or for the whole job where `size` is left out. */
export const LocalValue = z.strictObject({
  id: Id,
  job: Id,
  size: Id.optional(),
  line: z.string().max(60),
  text: Text,
  note: Words,
  by: z.enum(['client', 'us']),
});

export const StockEntry = z.strictObject({
  id: Id,
  material: Id,
  amount: z.number(),
  sealed: z.boolean(),
  /** The job it is kept for, if any. */
  reservedFor: Id.optional(),
  bestBefore: Day.optional(),
  quarantineUntil: Day.optional(),
  note: Words,
});

/** Packs of a material chosen by hand for a shopping run over these jobs, in place of the best. */
export const PackChoice = z.strictObject({
  id: Id,
  jobs: z.array(Id).min(1),
  material: Id,
  packs: z.array(z.strictObject({ pack: Id, count: z.int().min(0).max(9_999) })),
});

/** Frozen at *Issue*: `body` is everything it was worked from and came to, `sha256` its hash. */
export const IssuedQuote = z.strictObject({
  id: Id,
  job: Id.optional(),
  number: z.string(),
  revision: z.string(),
  issuedOn: Day,
  body: z.string(),
  sha256: z.string().length(64),
});

export const QuoteLine = z.strictObject({
  id: Id,
  job: Id,
  label: Words,
  group: Id,
  costCoins: Coins,
  by: z.enum(['client', 'us']),
});

export const TreatmentBatch = z.strictObject({
  id: Id,
  material: Id,
  litres: z.number(),
  way: z.enum(['steam', 'boil', 'bake']),
  aim: z.enum(['clean', 'sterile']),
  on: Day,
  collectedAt: Words,
  /** Readings as `minutes, degC` pairs. */
  log: z.array(z.tuple([z.number(), z.number()])),
  note: Words,
});

export const Tub = z.strictObject({
  id: Id,
  kind: Id,
  startedOn: Day,
  claimedBy: Id.optional(),
  spare: z.boolean(),
  place: Words,
  note: Words,
});

/** What a job took, by what it measures: minutes of a task, litres of a material, plants lost. */
export const Actual = z.strictObject({
  id: Id,
  job: Id,
  size: Id.optional(),
  line: z.string(),
  value: z.number(),
  unit: z.string(),
  on: Day,
  note: Words,
});

/** Every kind of record by its name; the order is the order in which they may refer to one another. */
export const recordKinds = {
  workshop: WorkshopSchema,
  supplier: Supplier,
  tank: Tank,
  material: Material,
  pack: Pack,
  packPrice: PackPrice,
  plant: Plant,
  cultureKind: CultureKind,
  rate: Rate,
  taxClass: TaxClass,
  margin: Margin,
  closedDay: ClosedDay,
  recipe: Recipe,
  line: Line,
  job: Job,
  size: Size,
  localValue: LocalValue,
  stockEntry: StockEntry,
  packChoice: PackChoice,
  issuedQuote: IssuedQuote,
  quoteLine: QuoteLine,
  treatmentBatch: TreatmentBatch,
  tub: Tub,
  actual: Actual,
} as const;

export type RecordKind = keyof typeof recordKinds;
export type RecordOf<K extends RecordKind> = z.infer<(typeof recordKinds)[K]>;

export type Workshop = z.infer<typeof WorkshopSchema>;
export type Supplier = z.infer<typeof Supplier>;
export type Tank = z.infer<typeof Tank>;
export type Material = z.infer<typeof Material>;
export type Pack = z.infer<typeof Pack>;
export type PackPrice = z.infer<typeof PackPrice>;
export type Plant = z.infer<typeof Plant>;
export type CultureKind = z.infer<typeof CultureKind>;
export type Rate = z.infer<typeof Rate>;
export type Margin = z.infer<typeof Margin>;
export type TaxClass = z.infer<typeof TaxClass>;
export type ClosedDay = z.infer<typeof ClosedDay>;
export type Recipe = z.infer<typeof Recipe>;
export type Line = z.infer<typeof Line>;
export type Job = z.infer<typeof Job>;
export type Size = z.infer<typeof Size>;
export type LocalValue = z.infer<typeof LocalValue>;
export type StockEntry = z.infer<typeof StockEntry>;
export type PackChoice = z.infer<typeof PackChoice>;
export type IssuedQuote = z.infer<typeof IssuedQuote>;
export type QuoteLine = z.infer<typeof QuoteLine>;
export type TreatmentBatch = z.infer<typeof TreatmentBatch>;
export type Tub = z.infer<typeof Tub>;
export type Actual = z.infer<typeof Actual>;

/** The kinds in the order in which they may refer to one another. */
export const allKinds = Object.keys(recordKinds) as readonly RecordKind[];

/** A whole book in memory: per kind, records by id. */
export type Records = { readonly [K in RecordKind]: ReadonlyMap<string, RecordOf<K>> };
