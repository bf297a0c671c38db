import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import { countUp } from '#shared-calc/trade/count-up.ts';
import { daysToCount } from '#shared-calc/trade/cultures/days-to-count.ts';
import { serveWith, type Season } from './culture-season.ts';
import type { CultureDemand, Seeding } from './culture-demands.ts';
import { isShort, type ServedClaim } from './serve-claims.ts';
import { dayNumber, mayTakeOn, tubStock } from './tub-stock.ts';

/** What a client's tank is seeded with from a cup, and its price. */
export interface Portion {
  readonly animals: number;
  readonly coins?: number;
}

/** A demand that tubs started today no longer serve, and what could be done instead. */
export interface LateCulture {
  readonly date: Day;
  /** Animals, up to the whole. */
  readonly short: number;
  /** When tubs started today give what is short; none within 400 days. */
  readonly readyOn?: Day;
  readonly cups: number;
  /** Price of the cups; none where it is not known. */
  readonly coins?: number;
  /** Seeded with what there is, the tank is ready so many days later; none where there is nothing, or no recipe's figure. */
  readonly wait?: number;
}

interface LateTerms {
  readonly starts: readonly number[];
  readonly on: Day;
  readonly demands: readonly CultureDemand[];
  readonly portion?: Portion | undefined;
}

const LONGEST = 400;

/** The claims that fall short where every tub that should stand already is started today. */
export function lateCultures(season: Season, terms: LateTerms): readonly LateCulture[] {
  const today = dayNumber(terms.on);
  const overdue = terms.starts.filter((start) => start < today).length;
  if (overdue === 0) return [];
  return serveWith(
    season,
    terms.starts.map((start) => Math.max(start, today)),
  )
    .filter(isShort)
    .map((served) => lateCulture(served, { season, overdue, ...terms }));
}

type OneLate = LateTerms & { readonly season: Season; readonly overdue: number };

function lateCulture({ claim, short }: ServedClaim, terms: OneLate): LateCulture {
  const { season, overdue, on, demands, portion } = terms;
  const animals = countUp(short);
  const cups = portion ? countUp(animals / portion.animals) : 0;
  const readyOn = readyFor(season, { animals: short, tubs: overdue, on, date: claim.date });
  const share = (claim.animals - short) / claim.animals;
  const waits = demands.filter(({ date }) => date === claim.date).map(({ seeding }) => waitOf(seeding, share));
  const wait = waits.every((each) => each !== undefined) ? Math.max(...waits) : undefined;
  return {
    date: claim.date,
    short: animals,
    ...(readyOn !== undefined && { readyOn }),
    cups,
    ...(portion?.coins !== undefined && { coins: cups * portion.coins }),
    ...(wait !== undefined && { wait }),
  };
}

interface Wanted {
  readonly animals: number;
  readonly tubs: number;
  readonly on: Day;
  readonly date: Day;
}

/** The first day from the build on, on which tubs started today give so many animals. */
function readyFor({ kind, perDay, founders }: Season, { animals, tubs, on, date }: Wanted): Day | undefined {
  const stock = tubStock(kind, perDay, { startedOn: on, founders });
  const today = dayNumber(on);
  const first = Math.max(0, dayNumber(date) - today);
  for (let age = first; age < LONGEST; age += 1) {
    if (mayTakeOn(stock, today + age) * tubs >= animals - 1e-9) return addDays(on, age);
  }
  return undefined;
}

/** Days that a tank seeded with a share of its springtails waits longer than its settle-in. */
function waitOf(seeding: readonly Seeding[] | undefined, share: number): number | undefined {
  if (!seeding || seeding.length === 0 || share <= 0) return undefined;
  const waits = seeding.map(({ animals, floorM2, target, room, rate, settleInDays }) => {
    const days = daysToCount.compute([(animals * share) / floorM2, target, room, rate]);
    return typeof days === 'number' ? Math.max(0, countUp(days) - settleInDays) : Number.NaN;
  });
  const longest = Math.max(...waits);
  return Number.isNaN(longest) ? undefined : longest;
}
