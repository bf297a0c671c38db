import { datedJob } from './dated-job.ts';
import { paragraph, type PaperBlock } from './document.ts';
import { jobWords, titleOf, type MakePaper } from './paper-input.ts';
import { paperWeekday } from './paper-words.ts';
import { prepRows } from './prep-card.ts';
import { sayPlan } from '#shared-calc/prepare/say-plan.ts';
import { ok } from '#shared-calc/result.ts';

/** What to order, treat, glue, blend and start, day by day, with the cautions of each. */
export const prepPaper: MakePaper = (input) => {
  const dated = datedJob(input);
  if (!dated.ok) return dated;
  const { plan } = dated.value;
  const says = sayPlan(plan, jobWords(input).title || 'the tank', input.wish.on);
  const rows = prepRows(plan);
  const blocks: readonly PaperBlock[] = [
    ...says.map(paragraph),
    {
      is: 'table',
      head: ['day', 'act', ''],
      rows: rows.map(({ date, act, decides }) => [paperWeekday(date), act, decides ? '(decides)' : '']),
      small: [2],
      tick: true,
      cautions: rows.map(({ act, cautions }) => cautions.map((caution) => ({ ...caution, about: act }))),
    },
  ];
  return ok({ data: { says, rows }, document: { title: `Prep plan, ${titleOf(input)}`, blocks } });
};
