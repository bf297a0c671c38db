import { addDays, daysBetween, type Day } from '#shared-calc/calendar/day.ts';
import { isOpen, nextOpen, previousOpen, type WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { readyDate } from '#shared-calc/trade/dates/ready-date.ts';
import { careDates, type CareDate } from './care-calendar.ts';
import { chainBackward, datedChains, firstDay, type DatedChain } from './dated-chains.ts';
import type { PlanFacts } from './plan-facts.ts';
import type { PlanFault } from './plan-fault.ts';
import { prepChains, type PlanDays, type PrepChain } from './prep-chains.ts';
import type { PrepStep, PrepStepName } from './prep-steps.ts';
import { stepsOfPlan } from './steps-of-plan.ts';

export interface PlanWish {
  /** The wanted handover; if left out, the earliest possible is planned. */
  readonly handover?: Day;
  /** The day of the deposit, from which goods can be ordered; if left out, today. */
  readonly deposit?: Day;
  /** Today. */
  readonly on: Day;
  readonly calendar: WorkCalendar;
}

export interface PrepPlan {
  readonly build: Day;
  readonly handover: Day;
  readonly wanted?: Day;
  /** The handover stays on a day on which the workshop is closed. */
  readonly onClosedDay: boolean;
  /** Calendar days from the wanted handover to the forecast one: of this morning, it may move with each day. */
  readonly late: number;
  /** The chain that decides, in words: "plant quarantine". */
  readonly because: string;
  /** What is first to be done of that chain, and its last day; or until when it is waited for. */
  readonly decides: { readonly first: PrepStepName | 'handover'; readonly is: PrepChain['is']; readonly by: Day };
  /** In the order of `prepSteps`; steps that the order does not need are left out. */
  readonly steps: readonly PrepStep[];
  /** A tank is supplied by the client; it must be there on the date of the step. */
  readonly clientTank: boolean;
  /** When the watch was signed, and when the tank was handed over. */
  readonly watchedOn?: Day;
  readonly handedOverOn?: Day;
  readonly care: readonly CareDate[];
}

/**
 * The plan of a morning. Open steps start today or with the deposit, on an open day; steps that are over stand on their
 * own day. The build is on the wanted day where the last chain ends by then, else on the day on which it ends, and the
 * handover moves with it; each date of an open step is then the latest for that build. Leads are working days, all
 * other waits calendar days. A build is on an open day, the handover on the wanted day.
 */
export function prepPlan(facts: PlanFacts, wish: PlanWish): Result<PrepPlan, PlanFault> {
  const { calendar } = wish;
  const at = daysFrom(wish);
  const chains = prepChains(facts, at);
  const { done = {} } = facts;
  if (chains.length === 0 && done.build === undefined) {
    return failed({ kind: 'refused', says: 'Nothing to wait for: the order has no size.' });
  }
  const ready = readyDate(at.start, named([...chains, built]), calendar);
  if ('refused' in ready) return failed(whyNever(chains, wish, ready.refused));
  const dates = handoverDates(facts, wish, ready.date);
  const dated = datedChains([...chains, built], { build: dates.build, ready, calendar });
  const steps = stepsOfPlan(facts, { at, build: dates.build, dated });
  const care = careDates(dates.handover, calendar);
  const days = [
    dates.handover,
    ...dated.flatMap((each) => each.days),
    ...steps.flatMap(daysOf),
    ...care.map(({ date }) => date),
  ];
  if (!allOnCalendar(days)) return failed({ kind: 'off-calendar' });
  return ok({
    ...dates,
    onClosedDay: !isOpen(dates.handover, calendar),
    ...(wish.handover !== undefined && { wanted: wish.handover }),
    ...decidedBy(facts, { dates, dated, decides: dated[Number(ready.decides)], wish }),
    steps,
    clientTank: facts.clientTank,
    ...(done.watch !== undefined && { watchedOn: done.watch }),
    ...(done.handover !== undefined && { handedOverOn: done.handover }),
    care,
  });
}

function daysFrom({ on, deposit = on, calendar }: PlanWish): PlanDays {
  return { on, start: nextOpen(on < deposit ? deposit : on, calendar), calendar };
}

/** The build itself, which is not before the start of the plan either. */
const built: PrepChain = { because: 'the build', first: 'build', is: 'to do', links: [] };

/** Years of four digits: only these sort as text. */
function allOnCalendar(days: readonly Day[]): boolean {
  return days.every((day) => /^\d{4}-/.test(day) && day >= '0001-01-01');
}

function daysOf({ date, orderBy = date }: PrepStep): readonly Day[] {
  return [date, orderBy];
}

/** Chains by index, as two suppliers of a step would share a name. */
function named(chains: readonly PrepChain[]) {
  return chains.map(({ from, links }, at) => ({
    name: String(at),
    ...(from !== undefined && { from }),
    steps: links.map(({ wait }) => wait),
  }));
}

type PlanDates = Pick<PrepPlan, 'build' | 'handover' | 'late'>;

/** When it is built and handed over: what is done on its own day, else as wanted, else as soon as can be. */
function handoverDates(facts: PlanFacts, wish: PlanWish, ready: Day): PlanDates {
  const { settleIn, done = {} } = facts;
  const { handover: wanted, calendar, on } = wish;
  if (wanted === undefined) {
    const build = done.build ?? ready;
    return { build, handover: done.handover ?? notPast(addDays(build, settleIn), on, calendar), late: 0 };
  }
  const wantedBuild = previousOpen(addDays(wanted, -settleIn), calendar);
  const build = done.build ?? (ready <= wantedBuild ? wantedBuild : ready);
  const settled = build <= wantedBuild ? wanted : nextOpen(addDays(build, settleIn), calendar);
  const handover = done.handover ?? (settled < on ? nextOpen(on, calendar) : settled);
  return { build, handover, late: Math.max(0, daysBetween(wanted, handover)) };
}

function notPast(day: Day, on: Day, calendar: WorkCalendar): Day {
  return nextOpen(day < on ? on : day, calendar);
}

interface Deciding {
  readonly dates: PlanDates;
  readonly dated: readonly DatedChain[];
  /** The chain that is ready last. */
  readonly decides: DatedChain | undefined;
  readonly wish: PlanWish;
}

/**
 * The chain that decides. Of a build that is over, the watch after it. While the wanted day is kept: a chain that is
 * only waited for and ends on the day of the build, else the open one that must begin first; otherwise the last to be
 * ready.
 */
function decidedBy(facts: PlanFacts, { dates, dated, decides, wish }: Deciding): Pick<PrepPlan, 'because' | 'decides'> {
  if (facts.done?.build !== undefined) {
    return { because: 'settling in', decides: { first: 'handover', is: 'waiting', by: dates.handover } };
  }
  const isKept = dates.late === 0 && wish.handover !== undefined;
  const found = (isKept ? (tightOf(dated, dates.build) ?? firstToBegin(dated)) : undefined) ?? decides;
  if (!found) throw new Error('a plan without chains');
  const { because, first, is } = found.chain;
  return { because, decides: { first, is, by: is === 'waiting' ? found.ready : firstDay(found) } };
}

function tightOf(dated: readonly DatedChain[], build: Day): DatedChain | undefined {
  return dated.find(({ chain, ready }) => chain.is === 'waiting' && ready === build);
}

/** The first of equal ones. The build itself is behind all others. */
function firstToBegin(dated: readonly DatedChain[]): DatedChain | undefined {
  return dated
    .filter(({ chain }) => chain.is !== 'waiting' && chain.first !== 'build')
    .reduce<DatedChain | undefined>(
      (first, each) => (first && firstDay(first) <= firstDay(each) ? first : each),
      undefined,
    );
}

/** If no chain failed for its delivery days, the fault is the trade function's own sentence. */
function whyNever(chains: readonly PrepChain[], { on, calendar }: PlanWish, says: string): PlanFault {
  const stuck = chains.find((chain) => chainBackward(on, chain.links, calendar) === undefined);
  return stuck ? { kind: 'never-delivered', what: stuck.first } : { kind: 'refused', says };
}
