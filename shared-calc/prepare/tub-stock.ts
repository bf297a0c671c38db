import { byDay, addDays, daysBetween, type Day } from '#shared-calc/calendar/day.ts';
import type { CultureKind, Move } from '#shared-calc/records/records.ts';
import { grownCount } from '#shared-calc/trade/cultures/grow-count.ts';

/** Days are counted from here while a board is worked: whole numbers are faster than dates. */
const DAY_ZERO = '2000-01-01';

export function dayNumber(day: Day): number {
  return daysBetween(DAY_ZERO, day);
}

export function dayOfNumber(day: number): Day {
  return addDays(DAY_ZERO, day);
}

interface Counted {
  readonly day: number;
  readonly animals: number;
}

/** A tub as it was last known; it grows from there by the curve of its kind. */
export interface TubStock {
  readonly kind: CultureKind;
  readonly perDay: number;
  readonly started: number;
  readonly known: Counted;
  /** What was taken, by day. */
  readonly taken: readonly Counted[];
}

export interface TubStart {
  readonly startedOn: Day;
  readonly founders: number;
}

/** A tub from its start and what was taken from it and counted in it since. */
export function tubStock(
  kind: CultureKind,
  perDay: number,
  { startedOn, founders, moves = [] }: TubStart & { readonly moves?: readonly Pick<Move, 'on' | 'what' | 'amount'>[] },
): TubStock {
  return moves.toSorted(byDay(({ on }) => on)).reduce(
    (stock, { on, what, amount }) => {
      const day = dayNumber(on);
      return what === 'counted' ? { ...stock, known: { day, animals: amount } } : takeFrom(stock, day, -amount);
    },
    freshTub(kind, perDay, { started: dayNumber(startedOn), founders }),
  );
}

/** A tub on the day of its start. */
export function freshTub(
  kind: CultureKind,
  perDay: number,
  { started, founders }: { readonly started: number; readonly founders: number },
): TubStock {
  return { kind, perDay, started, known: { day: started, animals: founders }, taken: [] };
}

/** Animals in the tub on a day; none before it was started. */
export function animalsOn({ kind, perDay, started, known }: TubStock, day: number): number {
  if (day < started) return 0;
  if (known.animals >= kind.capacity) return known.animals;
  return grownCount(known.animals, kind.capacity, perDay, Math.max(0, day - known.day));
}

/** What a harvest may take on a day; the rest is the breeding stock. */
export function mayTakeOn(stock: TubStock, day: number): number {
  const { kind, started } = stock;
  if (day - started < kind.firstHarvestDays) return 0;
  const recent = stock.taken.filter((each) => each.day > day - kind.harvestEveryDays && each.day <= day);
  const animals = animalsOn(stock, day);
  if (kind.taken === 'floated') return recent.length > 0 ? 0 : kind.harvestShare * animals;
  const sum = recent.reduce((total, each) => total + each.animals, 0);
  return Math.max(0, kind.harvestShare * (animals + sum) - sum);
}

/** The tub after animals were taken from it. */
export function takeFrom(stock: TubStock, day: number, animals: number): TubStock {
  return {
    ...stock,
    known: { day, animals: Math.max(0, animalsOn(stock, day) - animals) },
    taken: [...stock.taken, { day, animals }],
  };
}
