import { datedJob } from './dated-job.ts';
import { paragraph, type PaperBlock } from './document.ts';
import { displayFor, jobWords, titleOf, type MakePaper } from './paper-input.ts';
import { paperWeekday } from './paper-words.ts';
import { prepRows, type PrepRow } from './prep-card.ts';
import { sayPlan } from '#shared-calc/prepare/say-plan.ts';
import { ok } from '#shared-calc/result.ts';

/** What to order, treat, glue, blend and start, day by day, with the cautions of each. */
export const prepPaper: MakePaper = (input) => {
  const dated = datedJob(input);
  if (!dated.ok) return dated;
  const { plan } = dated.value;
  const days = displayFor(input);
  const says = sayPlan(plan, { what: jobWords(input).title || 'the tank', days });
  const rows = prepRows(plan, days);
  const blocks: readonly PaperBlock[] = [
    ...says.map(paragraph),
    {
      is: 'table',
      head: ['day', 'act', ''],
      rows: rows.map((row) => [paperWeekday(row.date, days), row.act, noteOf(row)]),
      small: [2],
      tick: true,
      cautions: rows.map(({ act, cautions }) => cautions.map((caution) => ({ ...caution, about: act }))),
    },
  ];
  return ok({ data: { says, rows }, document: { title: `Prep plan, ${titleOf(input)}`, blocks } });
};

/** `done`, `overdue: ask (decides)` */
export function noteOf({ state, says, decides }: PrepRow): string {
  const is = says ?? (state === 'open' ? '' : state);
  return [is, decides ? '(decides)' : ''].filter((word) => word !== '').join(' ');
}
