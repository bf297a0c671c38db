import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { NoAmount } from '#shared-calc/bench/order-amounts.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import type { UseName } from '#shared-calc/fields/uses.ts';
import { lineFor } from '#shared-calc/recipe/lines-by-use.ts';
import type { CultureKind } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { countUp } from '#shared-calc/trade/count-up.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import type { Claim } from './serve-claims.ts';
import { sizeFigures } from './size-figures.ts';
import { dayNumber } from './tub-stock.ts';

/** What the builds of a day ask for of a kind, for one job where they are of one. */
export interface CultureDemand {
  readonly date: Day;
  readonly animals: number;
  readonly job?: string;
  /** How its tanks are seeded, if the recipe has those figures. */
  readonly seeding?: readonly Seeding[];
}

/** Springtails of one size of tank: they grow from the seed to the target while the tank settles. */
export interface Seeding {
  readonly animals: number;
  readonly floorM2: number;
  /** Each a square metre. */
  readonly target: number;
  readonly room: number;
  /** A day, as a share. */
  readonly rate: number;
  readonly settleInDays: number;
}

export type DemandFault =
  | NoAmount
  /** The recipe has no line for how many of this kind a build uses. */
  | { readonly kind: 'no-seed-line'; readonly culture: string; readonly use: UseName };

/** Flies are planned by the week, not for a build. */
export function isFlies({ animals }: Pick<CultureKind, 'animals'>): boolean {
  return animals === 'flies';
}

/** The use of the line for how many of a kind one build is started with. */
export function seedUseOf({ animals }: Pick<CultureKind, 'animals'>): 'springtailSeed' | 'isopodFounders' {
  return animals === 'isopods' ? 'isopodFounders' : 'springtailSeed';
}

/** Animals of a kind that all builds of some columns are started with, rounded up. */
export function animalsFor(bench: Bench, columns: readonly string[], kind: CultureKind): Result<number, DemandFault> {
  const use = seedUseOf(kind);
  const seeded = bench.input().columns.flatMap(({ key, count }) => {
    const line = columns.includes(key) ? lineFor(bench.lines(key), use) : undefined;
    return line ? [{ count, box: bench.box(key, line.name) }] : [];
  });
  if (seeded.length === 0) return failed({ kind: 'no-seed-line', culture: kind.label, use });
  let animals = 0;
  for (const { count, box } of seeded) {
    if (typeof box.value !== 'number') return failed({ kind: 'no-amount-yet', box });
    animals += countUp(box.value) * count;
  }
  return ok(animals);
}

/** How each size of tank among some columns is seeded; none where the recipe lacks a figure of it. */
export function seedingOf(bench: Bench, columns: readonly string[], kind: CultureKind): readonly Seeding[] | undefined {
  const seeded = columns.filter((key) => lineFor(bench.lines(key), seedUseOf(kind)) !== undefined);
  const seedings = seeded.map((key) => seedingIn(bench, key, kind));
  if (seedings.length === 0) return undefined;
  return seedings.every((each) => each !== undefined) ? seedings : undefined;
}

function seedingIn(bench: Bench, key: string, kind: CultureKind): Seeding | undefined {
  const { number } = sizeFigures(bench, key, plainDisplay);
  if (seedUseOf(kind) !== 'springtailSeed') return undefined;
  const figures = {
    animals: number('springtailSeed', 'each'),
    floorM2: number('floorArea', 'm2'),
    target: number('springtailTarget', 'each/m2'),
    room: number('springtailRoom', 'each/m2'),
    rate: number('springtailRate', 'each/d'),
    settleInDays: number('settleIn', 'd'),
  };
  return allKnown(figures) ? figures : undefined;
}

function allKnown<K extends string>(figures: Readonly<Record<K, number | undefined>>): figures is Record<K, number> {
  return Object.values(figures).every((each) => each !== undefined);
}

/** One claim a day, by date: a harvest is shared among the builds of its day. Days without a demand are left out. */
export function claimsOf(demands: readonly CultureDemand[]): readonly Claim[] {
  return [...Map.groupBy(demands, ({ date }) => date)]
    .map(([date, ofDay]) => {
      const byJob = new Map<string, number>();
      for (const { job = '', animals } of ofDay) byJob.set(job, (byJob.get(job) ?? 0) + animals);
      return { date, day: dayNumber(date), animals: ofDay.reduce((sum, { animals }) => sum + animals, 0), byJob };
    })
    .filter(({ animals }) => animals > 0)
    .toSorted((one, other) => one.day - other.day);
}
