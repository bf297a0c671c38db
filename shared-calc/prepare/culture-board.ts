import type { Day } from '#shared-calc/calendar/day.ts';
import type { CultureKind } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { countUp } from '#shared-calc/trade/count-up.ts';
import { claimsOf, isFlies, type CultureDemand } from './culture-demands.ts';
import { flyShelf, type FlyShelf, type FlyWish } from './fly-shelf.ts';
import { growthRate, type GrowthRate } from './growth-rate.ts';
import { lateCultures, type LateCulture, type Portion } from './late-cultures.ts';
import { isMet, newTub, serveWith, type Season } from './culture-season.ts';
import { isShort, type BoardTub, type ServedClaim } from './serve-claims.ts';
import { dayOfNumber, mayTakeOn } from './tub-stock.ts';
import { standingOn, type StandingTub, type TubFacts } from './standing-tub.ts';
import { foundersFor, usualAge, type TubWay } from './tub-ways.ts';

/** One spare tub for every five, at least one. */
const SPARE_SHARE = 0.2;
const MOST_TUBS = 500;
/** A tub older than this at its first harvest is no plan. */
const OLDEST = 400;

export interface CultureWish {
  readonly kind: CultureKind;
  readonly demands: readonly CultureDemand[];
  /** Tubs that stand. */
  readonly tubs?: readonly TubFacts[];
  readonly way?: TubWay;
  /** Of new tubs, and of those that stand without a temperature of their own. */
  readonly degC?: number;
  readonly flies?: FlyWish;
  /** What can be bought instead of animals that come too late. */
  readonly portion?: Portion;
  /** Today. */
  readonly on: Day;
}

export interface CultureBoard extends FlyShelf {
  readonly kind: CultureKind;
  readonly way: TubWay;
  /** Growth of new tubs; none for flies. */
  readonly rate?: GrowthRate;
  /** At most one for each day, by date. */
  readonly demands: readonly { readonly date: Day; readonly animals: number }[];
  /** New tubs, besides those that stand. */
  readonly tubs: number;
  readonly spare: number;
  /** The last day on which the first new tub can be started. */
  readonly startBy?: Day;
  /** When each new tub must be started, in the order in which they are wanted. */
  readonly starts: readonly Day[];
  /** Animals to start a tub with. */
  readonly founders: number;
  readonly standing: readonly StandingTub[];
  /** Which tub gives what on which day; new ones are `new 1`, `new 2`. */
  readonly served: readonly ServedClaim[];
  /** One tub less, all started on one earlier day. */
  readonly fewer?: { readonly tubs: number; readonly startBy: Day };
  readonly late: readonly LateCulture[];
  /** A split is asked for and no tub stands. */
  readonly nothingToSplit: boolean;
}

/** Tubs to start for dated builds, beside those that stand: as late as serves all of them. */
export function cultureBoard(wish: CultureWish): Result<CultureBoard, string> {
  const { kind, on, way = 'split', demands, portion } = wish;
  const flies = flyShelf(wish.flies, on);
  if (!flies.ok) return flies;
  const standing = (wish.tubs ?? []).map((tub) => standingOn(tub, kind, { on, degC: wish.degC }));
  const asked = seasonOf(wish, standing);
  if (!asked.ok) return asked;
  const plan = planOf(asked.value, way);
  if (!plan.ok) return plan;
  const { season, starts } = plan.value;
  const rate = growthRate(kind, wish.degC);
  return ok({
    kind,
    way,
    ...(rate && { rate }),
    demands: season.claims.map(({ date, animals }) => ({ date, animals })),
    spare: spareTubs(asked.value, { standing, started: starts.length }),
    founders: season.founders,
    standing,
    served: serveWith(season, starts),
    late: lateCultures(season, { starts, on, demands, portion }),
    nothingToSplit: way === 'split' && starts.length > 0 && standing.length === 0,
    ...startDays(season, starts),
    ...flies.value,
  });
}

function seasonOf(
  { kind, way = 'split', degC, demands }: CultureWish,
  standing: readonly StandingTub[],
): Result<Season, string> {
  const founders = foundersFor(kind, way);
  if (!founders.ok) return founders;
  const rate = growthRate(kind, degC);
  if (!rate && !isFlies(kind)) return failed(sayUnknownGrowth(kind, degC));
  return ok({
    kind,
    claims: claimsOf(demands),
    standing: standing.flatMap(boardTubOf),
    perDay: rate?.perDay ?? 0,
    founders: founders.value,
  });
}

/** When the new tubs are started, and how fewer would do. */
function startDays(
  season: Season,
  starts: readonly number[],
): Pick<CultureBoard, 'tubs' | 'starts' | 'startBy' | 'fewer'> {
  const [startBy] = starts.toSorted((one, other) => one - other);
  const fewer = fewerTubs(season, starts);
  return {
    tubs: starts.length,
    starts: starts.map(dayOfNumber),
    ...(startBy !== undefined && { startBy: dayOfNumber(startBy) }),
    ...(fewer && { fewer }),
  };
}

interface Kept {
  readonly standing: readonly StandingTub[];
  readonly started: number;
}

/** Spare tubs to start beside the spare ones that stand. */
function spareTubs({ claims, standing: serving }: Season, { standing, started }: Kept): number {
  if (claims.length === 0) return 0;
  const spares = standing.filter(({ spare, is }) => spare && is !== 'used up').length;
  return Math.max(0, Math.max(1, countUp(SPARE_SHARE * (serving.length + started))) - spares);
}

function sayUnknownGrowth({ label, lowestC, highestC }: CultureKind, degC: number | undefined): string {
  return `${label} at ${degC} degC: growth is known from ${lowestC} to ${highestC} degC alone; count the tub.`;
}

/** A spare tub serves nobody, nor does one whose animals are not known. */
function boardTubOf({ tub, stock, spare, keptFor, is }: StandingTub): readonly BoardTub[] {
  if (spare || !stock || is === 'used up') return [];
  return [{ id: tub, stock, ...(keptFor !== undefined && { keptFor }) }];
}

/** New tubs at their usual age before the claims that fall short, then each as much later as all claims allow. */
function startsOf(season: Season, way: TubWay): Result<readonly number[], string> {
  if (season.claims.length === 0) return ok([]);
  const age = usualAge(season.kind, way, season.perDay);
  if (!age.ok) return age;
  const starts: number[] = [];
  for (;;) {
    const short = serveWith(season, starts).find(isShort);
    if (!short) return ok(startedLater(season, starts));
    const start = short.claim.day - age.value;
    const each = mayTakeOn(newTub(season, start), short.claim.day);
    const more = each > 0 ? countUp(short.short / each) : Infinity;
    if (starts.length + more > MOST_TUBS) return failed(tooMany(season.kind));
    starts.push(...Array<number>(Math.max(1, more)).fill(start));
  }
}

function tooMany({ label }: CultureKind): string {
  return `That takes more than ${MOST_TUBS} tubs of ${label}: spread the builds, or buy the animals.`;
}

/** From the last tub to the first, its start moves later while all claims are met, until none can move. */
function startedLater(season: Season, starts: readonly number[]): readonly number[] {
  const moved = [...starts];
  const end = season.claims.at(-1)?.day ?? 0;
  for (let at = moved.length - 1; at >= 0; at -= 1) {
    for (let start = moved[at] ?? end; start < end; start += 1) {
      if (!isMet(season, moved.with(at, start + 1))) break;
      moved[at] = start + 1;
    }
  }
  return moved.some((start, at) => start !== starts[at]) ? startedLater(season, moved) : moved;
}

interface Plan {
  readonly season: Season;
  readonly starts: readonly number[];
}

/**
 * The new tubs beside those that stand. A standing tub that is floated for a small part of a claim can cost a new one at
 * the next: then it is left out.
 */
function planOf(season: Season, way: TubWay): Result<Plan, string> {
  const starts = startsOf(season, way);
  if (!starts.ok || starts.value.length === 0) return starts.ok ? ok({ season, starts: [] }) : starts;
  for (const tub of season.standing) {
    const without = { ...season, standing: season.standing.filter((each) => each !== tub) };
    const fewer = startsOf(without, way);
    if (fewer.ok && fewer.value.length < starts.value.length) return planOf(without, way);
  }
  return ok({ season, starts: starts.value });
}

/** One tub less, all started on the latest earlier day on which they serve everything. */
function fewerTubs(season: Season, starts: readonly number[]): CultureBoard['fewer'] {
  const first = season.claims[0]?.day ?? 0;
  if (starts.length < 2) return undefined;
  for (let start = Math.min(...starts) - 1; first - start < OLDEST; start -= 1) {
    const tubs = starts.length - 1;
    if (isMet(season, Array<number>(tubs).fill(start))) return { tubs, startBy: dayOfNumber(start) };
  }
  return undefined;
}
