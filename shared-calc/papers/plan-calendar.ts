import { capital } from '#shared-calc/rule/capital.ts';
import { careActs, prepActs, siteActs, type HazardousAct } from '#shared-calc/cautions/acts.ts';
import { cautionsOf } from '#shared-calc/prepare/act-cautions.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import type { CareRound } from '#shared-calc/prepare/care-calendar.ts';
import type { PrepPlan } from '#shared-calc/prepare/prep-plan.ts';
import type { CalendarEntry } from './calendar-file.ts';
import { careWords, stepWords } from './step-words.ts';

export interface DatedPlan {
  readonly job: string;
  readonly title: string;
  readonly plan: PrepPlan;
  /** Draining and refilling, by whoever keeps the tank. */
  readonly rounds: readonly CareRound[];
  /** The first day on which the lamps are due, if known. */
  readonly lampsFrom?: Day;
}

const YEAR = 365;

/** All dates of a job that are ahead, up to the end of its first year, as entries of a calendar. */
export function planEntries(dated: DatedPlan, place: string): readonly CalendarEntry[] {
  const { plan, job, title } = dated;
  const uidOf = (what: string) => `${job}-${what}@${slug(place)}.loamwright`.toLowerCase();
  const entry = (what: string, date: Day, words: string, act: HazardousAct): CalendarEntry => {
    const cautions = cautionsOf(act);
    return {
      uid: uidOf(what),
      date,
      title: `${words}: ${title}`,
      note: job,
      ...(cautions.length > 0 && { cautions }),
    };
  };
  const ahead = plan.steps.filter(({ state }) => state !== 'in' && state !== 'done');
  return [
    ...ahead.flatMap(({ step, date, orderBy }) => {
      const { order, done } = stepWords[step];
      const words = step === 'tank' && plan.clientTank ? "The client's tank is here" : done;
      const ordered = orderBy === undefined ? [] : [entry(`${step}-order`, orderBy, order ?? done, prepActs.order)];
      return [...ordered, entry(step, date, words, prepActs[step])];
    }),
    entry('handover', plan.handover, stepWords.handover.done, prepActs.handover),
    ...plan.care.map(({ act, date }, at) =>
      entry(`care-${at + 1}`, date, careWords[act] ?? act, act === 'call' ? siteActs.call : siteActs.visit),
    ),
    ...dated.rounds.map((round) => ({
      ...entry(slug(round.act), round.first, `${capital(round.act)}, ${round.says}`, careActs[round.act]),
      ...(!round.once && {
        again: { everyDays: round.everyDays, times: Math.max(1, Math.floor(YEAR / round.everyDays)) },
      }),
    })),
    ...(dated.lampsFrom === undefined ? [] : [entry('lamps-due', dated.lampsFrom, 'Lamps are due', siteActs.lampsDue)]),
  ];
}

function slug(text: string): string {
  const plain = text
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-|-$/g, '');
  return plain === '' ? 'workshop' : plain;
}
