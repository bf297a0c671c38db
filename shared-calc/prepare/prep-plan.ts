import { addDays, daysBetween, type Day } from '#shared-calc/calendar/day.ts';
import { isOpen, nextOpen, previousOpen, type WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { readyDate, type ChainStep } from '#shared-calc/trade/dates/ready-date.ts';
import { careDates, type CareDate } from './care-calendar.ts';
import type { PlanFacts } from './plan-facts.ts';
import type { PlanFault } from './plan-fault.ts';
import { prepChains, type PrepChain } from './prep-chains.ts';
import { prepSteps, type PrepStep, type PrepStepName } from './prep-steps.ts';
import { previousDeliveryDay } from '#shared-calc/calendar/delivery-day.ts';
import { shiftWorkdays } from '#shared-calc/calendar/shift-workdays.ts';

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
  /** Calendar days from the wanted handover to the possible one. */
  readonly late: number;
  /** The chain that decides, in words: "plant quarantine". */
  readonly because: string;
  /** The first act of that chain, and its last day. */
  readonly decides: { readonly first: PrepChain['first']; readonly ordered: boolean; readonly by: Day };
  /** In the order of `prepSteps`; steps that the order does not need are left out. */
  readonly steps: readonly PrepStep[];
  /** Wood, cork and sealant, which have no step of their own: in before the gluing or the build. */
  readonly hardscape?: PrepStep<'hardscape'>;
  /** A tank is supplied by the client; it must be there on the date of the step. */
  readonly clientTank: boolean;
  readonly care: readonly CareDate[];
}

/**
 * Dates backward from the wanted handover. If the deposit, or today, is too late for them, the build moves to the day
 * on which the last chain from there ends, and the handover moves with it; each date is then the latest for that build.
 * Leads are working days, all other waits calendar days. A build is on an open day, the handover on the wanted day.
 */
export function prepPlan(facts: PlanFacts, wish: PlanWish): Result<PrepPlan, PlanFault> {
  const chains = prepChains(facts);
  const ready = readyDate(wish.deposit ?? wish.on, named(chains), wish.calendar);
  if ('refused' in ready) return failed(whyNever(chains, wish, ready.refused));
  const dates = handoverDates(facts, wish, ready.date);
  const backward = datedChains(chains, dates.build, wish.calendar);
  const deciding = dates.late > 0 || wish.handover === undefined ? backward[Number(ready.decides)] : earliest(backward);
  if (!deciding) return failed({ kind: 'refused', says: 'Nothing to wait for: the order has no size.' });
  const { chain } = deciding;
  const hardscape = stepOf('hardscape', backward);
  const care = careDates(dates.handover, wish.calendar);
  if (!allOnCalendar([...backward.flatMap(({ days }) => days), ...care.map(({ date }) => date)])) {
    return failed({ kind: 'off-calendar' });
  }
  return ok({
    ...dates,
    onClosedDay: !isOpen(dates.handover, wish.calendar),
    ...(wish.handover !== undefined && { wanted: wish.handover }),
    because: chain.because,
    decides: { first: chain.first, ordered: chain.ordered, by: firstDay(deciding) },
    steps: prepSteps.flatMap((step) =>
      step === 'build' ? { step, date: dates.build } : (stepOf(step, backward) ?? []),
    ),
    ...(hardscape && { hardscape }),
    clientTank: facts.clientTank,
    care,
  });
}

/** Years of four digits: only these sort as text. */
function allOnCalendar(days: readonly Day[]): boolean {
  return days.every((day) => /^\d{4}-/.test(day) && day >= '0001-01-01');
}

/** Chains by index, as two suppliers of a step would share a name. */
function named(chains: readonly PrepChain[]) {
  return chains.map(({ waits }, at) => ({ name: String(at), steps: waits }));
}

type PlanDates = Pick<PrepPlan, 'build' | 'handover' | 'late'>;

function handoverDates({ settleIn }: PlanFacts, { handover, calendar }: PlanWish, ready: Day): PlanDates {
  const wanted = handover === undefined ? undefined : previousOpen(addDays(handover, -settleIn), calendar);
  if (handover !== undefined && wanted !== undefined && ready <= wanted) return { build: wanted, handover, late: 0 };
  const settled = nextOpen(addDays(ready, settleIn), calendar);
  return { build: ready, handover: settled, late: handover === undefined ? 0 : daysBetween(handover, settled) };
}

interface DatedChain {
  readonly chain: PrepChain;
  readonly days: readonly Day[];
}

function datedChains(chains: readonly PrepChain[], build: Day, calendar: WorkCalendar): readonly DatedChain[] {
  return chains.flatMap((chain) => {
    const days = chainBackward(build, chain.waits, calendar);
    return days ? [{ chain, days }] : [];
  });
}

/** If no chain failed for its delivery days, the fault is the trade function's own sentence. */
function whyNever(chains: readonly PrepChain[], { on, calendar }: PlanWish, says: string): PlanFault {
  const stuck = chains.find((chain) => chainBackward(on, chain.waits, calendar) === undefined);
  return stuck ? { kind: 'never-delivered', what: stuck.first } : { kind: 'refused', says };
}

function firstDay({ days }: DatedChain): Day {
  return days[0] ?? '';
}

/** The chain with the earliest first day; the first of equal ones. */
function earliest(chains: readonly DatedChain[]): DatedChain | undefined {
  return chains.reduce<DatedChain | undefined>(
    (first, each) => (first && firstDay(first) <= firstDay(each) ? first : each),
    undefined,
  );
}

/** Over all chains that reach a step: its date is when the last goods are in, its order day the earliest. */
function stepOf<Name extends PrepStepName | 'hardscape'>(
  step: Name,
  chains: readonly DatedChain[],
): PrepStep<Name> | undefined {
  const dates = chains.flatMap(({ chain, days }) =>
    chain.marks.filter((mark) => mark.step === step).map(({ at }) => days[at] ?? ''),
  );
  const orders = chains.filter(({ chain }) => chain.ordered && chain.first === step).map(firstDay);
  const date = dates.toSorted().at(-1);
  const orderBy = orders.toSorted()[0];
  return date === undefined ? undefined : { step, date, ...(orderBy !== undefined && { orderBy }) };
}

/**
 * A chain of waits backward from the day they must end: the last day on which each may begin, and that day itself at
 * the end. A closed day, or one without a delivery, moves to an earlier one. `undefined` if the supplier never comes on
 * an open day.
 */
function chainBackward(end: Day, waits: readonly ChainStep[], calendar: WorkCalendar): readonly Day[] | undefined {
  const found = [end];
  let at = end;
  for (const wait of waits.toReversed()) {
    const before = stepBack(at, wait, calendar);
    if (before === undefined) return undefined;
    at = before;
    found.unshift(at);
  }
  return found;
}

function stepBack(day: Day, step: ChainStep, calendar: WorkCalendar): Day | undefined {
  switch (step.wait) {
    case 'workdays':
      return shiftWorkdays(day, -step.count, calendar);
    case 'days':
      return previousOpen(addDays(day, -step.count), calendar);
    case 'delivery':
      return previousDeliveryDay(day, step.weekdays, calendar);
    case 'open':
      return previousOpen(day, calendar);
  }
}
