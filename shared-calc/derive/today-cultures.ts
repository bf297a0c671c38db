import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import type { Derived } from './derived.ts';
import { fedHere } from './fed-here.ts';
import { kindDemands } from './kind-demands.ts';
import { cultureBoard } from '#shared-calc/prepare/culture-board.ts';
import { isFlies } from '#shared-calc/prepare/culture-demands.ts';
import { flyShelf } from '#shared-calc/prepare/fly-shelf.ts';
import type { ServedClaim } from '#shared-calc/prepare/serve-claims.ts';
import { sayDay } from '#shared-calc/prepare/say-day.ts';
import { tubsOf } from '#shared-calc/prepare/standing-tub.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { CultureKind } from '#shared-calc/records/records.ts';
import { countUp } from '#shared-calc/trade/count-up.ts';
import { grower, type TodayDraft } from './today-item.ts';

const WEEK = 7;

/** The step with which a tub was fed. */
const FED = 'feed';

/** Feeding, so many days after the start or the last feed of each tub, and harvests for the builds that claim them. */
export function tubItems(derived: Derived): readonly TodayDraft[] {
  const { records, today } = derived;
  const given: Given = new Map();
  return [...records.cultureKind.values()].flatMap((kind) => {
    const tubs = tubsOf(records, kind.id, today);
    if (tubs.length === 0) return [];
    const feeds = tubs.flatMap(({ id, startedOn }) => feedItem(derived, kind, { id, startedOn }) ?? []);
    return [...feeds, ...harvestItems(derived, kind, given)];
  });
}

/** What earlier kinds give a job of the same animals: a build wants springtails, of whichever kind, once. */
type Given = Map<string, number>;

function feedItem(
  { records: { done }, display }: Derived,
  { label, feedEveryDays }: CultureKind,
  { id, startedOn }: { readonly id: string; readonly startedOn: Day },
): TodayDraft | undefined {
  if (feedEveryDays === undefined) return undefined;
  const fed = [...done.values()].filter(({ tub, step }) => tub === id && step === FED).map(({ on }) => on);
  const last = fed.reduce((latest, on) => (on > latest ? on : latest), startedOn);
  return {
    key: `${id} feed`,
    tub: id,
    day: addDays(last, feedEveryDays),
    what: `feed ${id}`,
    who: grower,
    why: `${label}, ${last === startedOn && fed.length === 0 ? 'started' : 'fed'} on ${sayDay(last, display)}, every ${feedEveryDays} days`,
    tick: { is: 'did', step: FED, ends: false },
  };
}

function harvestItems(derived: Derived, kind: CultureKind, given: Given): readonly TodayDraft[] {
  const { records, today } = derived;
  const keyOf = (job: string) => `${kind.animals} ${job}`;
  const demands = kindDemands(derived, kind)
    .demands.map((each) => ({ ...each, animals: each.animals - (given.get(keyOf(each.job)) ?? 0) }))
    .filter(({ animals }) => animals > 0);
  if (demands.length === 0) return [];
  const board = cultureBoard({ kind, demands, tubs: tubsOf(records, kind.id, today), on: today });
  const harvests = board.ok ? board.value.served.flatMap((served) => harvestsOf(served, derived)) : [];
  for (const { job, animals } of harvests) given.set(keyOf(job), (given.get(keyOf(job)) ?? 0) + animals);
  return harvests.map((each) => harvestItem(each, derived.display));
}

interface Harvest {
  readonly tub: string;
  readonly job: string;
  readonly date: Day;
  readonly animals: number;
}

/** What each job gets out of each tub. Only standing tubs have animals to take; a new one is started for its job. */
function harvestsOf({ claim, from }: ServedClaim, { records }: Derived): readonly Harvest[] {
  const left = new Map(claim.byJob);
  return from.flatMap(({ tub, animals }) => {
    const stands = records.tub.get(tub);
    if (!stands) return [];
    const jobs = stands.claimedBy === undefined ? [...left.keys()] : [stands.claimedBy];
    let rest = animals;
    return jobs.flatMap((job): readonly Harvest[] => {
      const wanted = left.get(job) ?? 0;
      const given = Math.min(rest, wanted);
      if (countUp(given) === 0) return [];
      rest -= given;
      left.set(job, wanted - given);
      return [{ tub, job, date: claim.date, animals: countUp(given) }];
    });
  });
}

function harvestItem({ tub, job, date, animals }: Harvest, display: Display): TodayDraft {
  return {
    key: `${tub} harvest ${job}`,
    tub,
    job,
    day: date,
    what: `harvest ${writeNumber(animals, 0, display)} for ${job}`,
    who: grower,
    why: `For the build of ${sayDay(date, display)}, out of tub ${tub}`,
    tick: { is: 'harvest', animals },
  };
}

/** Tubs of flies to set up each week, for what is fed here and what paid jobs are built for. */
export function flyItems(derived: Derived): readonly TodayDraft[] {
  return [...derived.records.cultureKind.values()].filter(isFlies).flatMap((kind) => flyItem(derived, kind) ?? []);
}

function flyItem(derived: Derived, kind: CultureKind): TodayDraft | undefined {
  const { records, today, display } = derived;
  const { aWeek } = fedHere(derived, kind);
  const shelf = flyShelf({ kind, aWeek: countUp(aWeek) }, today);
  if (!shelf.ok || shelf.value.flyStarts === 0) return undefined;
  const { flyStarts } = shelf.value;
  const starts = tubsOf(records, kind.id, today)
    .map(({ startedOn }) => startedOn)
    .toSorted()
    .toReversed();
  const [latest] = starts;
  const ofWeek = starts.filter((start) => start > addDays(today, -WEEK)).length;
  const isSetUp = ofWeek >= flyStarts;
  const left = isSetUp ? flyStarts : flyStarts - ofWeek;
  return {
    key: `${kind.id} set up`,
    // Without all tubs of this week, the rest is due with the first of them, or a week after the last week's.
    day: latest === undefined || (!isSetUp && ofWeek > 0) ? today : addDays(latest, WEEK),
    what: `set up ${left} ${left === 1 ? 'tub' : 'tubs'} of ${kind.label}`,
    who: grower,
    why: `${flyStarts} each week for ${writeNumber(countUp(aWeek), 0, display)} flies`,
    tick: { is: 'start', kind: kind.id },
  };
}
