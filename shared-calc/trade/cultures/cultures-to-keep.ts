import { addDays, parseDay, type Day } from '#shared-calc/calendar/day.ts';
import { countUp } from '#shared-calc/trade/count-up.ts';
import { firstRefusal, type Refusal } from '#shared-calc/trade/first-refusal.ts';
import { belowZero, notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { outsideShare } from '#shared-calc/trade/refuse-share.ts';
import { listFunction, refused } from '#shared-calc/trade/trade-function.ts';

export interface CultureDemand {
  readonly date: Day;
  readonly animals: number;
}

export interface CultureTerms {
  /** Animals in one harvest of one tub. */
  readonly yield: number;
  /** Whole days until a harvested tub can be harvested again. */
  readonly refillDays: number;
  /** Whole days from starting a tub to its first harvest. */
  readonly matureDays: number;
  readonly spareShare: number;
}

export interface CulturePlan {
  readonly tubs: number;
  readonly spare: number;
  /** The first day on which a tub must be started; left out if nothing is wanted. */
  readonly startBy?: Day;
  /** When each tub must be started, in the order they are wanted. */
  readonly tubStarts: readonly Day[];
  /** Which tub (from 1) is harvested when. */
  readonly harvests: readonly { readonly date: Day; readonly tub: number }[];
}

const MOST_HARVESTS = 1000;

/**
 * Tubs to keep for dated demands: each is served from the tub that is ready first, or from one more tub. A demand over
 * one tub's yield takes several tubs; the rest of a harvest is not kept.
 */
export function culturesToKeep(demands: readonly CultureDemand[], terms: CultureTerms): CulturePlan | Refusal {
  const wrong = refuseTerms(terms) ?? refuseDemands(demands, terms);
  if (wrong) return wrong;
  const { tubStarts, harvests } = serve(harvestDays(demands, terms), terms);
  const tubs = tubStarts.length;
  const spare = tubs === 0 ? 0 : Math.max(1, countUp(terms.spareShare * tubs));
  const startBy = tubStarts[0];
  return { tubs, spare, ...(startBy !== undefined && { startBy }), tubStarts, harvests };
}

/** One day for each harvest, in order. */
function harvestDays(demands: readonly CultureDemand[], terms: CultureTerms): readonly Day[] {
  return demands.flatMap(({ date, animals }) => Array<Day>(countUp(animals / terms.yield)).fill(date)).toSorted();
}

function serve(days: readonly Day[], terms: CultureTerms): Pick<CulturePlan, 'tubStarts' | 'harvests'> {
  const readyOn: Day[] = [];
  const tubStarts: Day[] = [];
  const harvests: { date: Day; tub: number }[] = [];
  for (const date of days) {
    const ready = earliest(readyOn);
    const isReady = ready !== undefined && ready.day <= date;
    const at = isReady ? ready.at : readyOn.length;
    if (!isReady) tubStarts.push(addDays(date, -terms.matureDays));
    readyOn[at] = addDays(date, terms.refillDays);
    harvests.push({ date, tub: at + 1 });
  }
  return { tubStarts, harvests };
}

function earliest(readyOn: readonly Day[]): { readonly day: Day; readonly at: number } | undefined {
  const day = readyOn.toSorted()[0];
  return day === undefined ? undefined : { day, at: readyOn.indexOf(day) };
}

function refuseTerms({ yield: ofTub, refillDays, matureDays, spareShare }: CultureTerms): Refusal | undefined {
  const whole = Number.isInteger(refillDays) && Number.isInteger(matureDays);
  return (
    notAboveZero({ "A tub's yield": ofTub }) ??
    belowZero({ 'Days to refill': refillDays, 'Days to mature': matureDays }) ??
    firstRefusal([[!whole, 'Days of a culture are whole days.']]) ??
    outsideShare({ 'The spare share': spareShare })
  );
}

function refuseDemands(demands: readonly CultureDemand[], terms: CultureTerms): Refusal | undefined {
  const noDay = demands.find(({ date }) => !parseDay(date).ok);
  if (noDay) return refused(`${noDay.date} is no day; write it as 2027-06-28.`);
  const harvests = demands.reduce((sum, { animals }) => sum + countUp(animals / terms.yield), 0);
  const tooMany = `That takes ${harvests} harvests; ${MOST_HARVESTS} is the limit here.`;
  return (
    belowZero({ 'A demand': Math.min(0, ...demands.map(({ animals }) => animals)) }) ??
    firstRefusal([[harvests > MOST_HARVESTS, tooMany]])
  );
}

export const culturesToKeepEntry = listFunction({
  name: 'CULTURES_TO_KEEP',
  title: 'Cultures to keep',
  group: 'cultures',
  takes: "dated demands, a tub's yield, days to refill, days to mature, spare share",
  gives: 'tubs, spare tubs, first day to start one',
  sum: 'each demand from the tub ready first, else one tub more; spare = the share of the tubs, up to the whole, at least 1',
  help: 'How many tubs the builds of a season ask for. A demand over one harvest takes several tubs; what is over is not kept.',
  examples: [
    {
      rule: '28 Jun 2027 2,130; 5 Jul 1,581; 19 Jul 1,914; yield 3,000; refill 14 d; mature 28 d; spare 20 %',
      gives: '2 tubs and 1 spare, start by 31 May 2027',
    },
    {
      rule: '28 Jun 2027 7,000; yield 3,000; refill 14 d; mature 28 d; spare 20 %',
      gives: '3 tubs and 1 spare, start by 31 May 2027',
    },
  ],
  source: 'common practice, no source',
  caution: 'Keep pure cultures in two places; never release them outdoors.',
  decides: 'Grower',
});
