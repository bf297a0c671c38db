import { byDay } from '#shared-calc/calendar/day.ts';
import { eachOnce } from '#shared-calc/cautions/all-cautions.ts';
import { cautionsBlock } from './document.ts';
import { datedJob } from './dated-job.ts';
import { soonestRounds } from '#shared-calc/prepare/size-care.ts';
import { csvText } from './csv-text.ts';
import { displayFor, jobWords, titleOf, type MakePaper } from './paper-input.ts';
import { paperWeekday } from './paper-words.ts';
import { planEntries } from './plan-calendar.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { ok } from '#shared-calc/result.ts';

/** All dates of an order, up to the end of its first year. */
export const calendarPaper: MakePaper = (input) => {
  const dated = datedJob(input);
  if (!dated.ok) return dated;
  const { plan, care, lamps } = dated.value;
  const { id, title } = jobWords(input);
  const workshop = workshopOf(input.records);
  const entries = planEntries(
    {
      job: id || 'order',
      title: title || titleOf(input),
      plan,
      rounds: soonestRounds(care),
      ...(lamps && { lampsFrom: lamps.from }),
    },
    workshop.name,
  ).toSorted(byDay(({ date }) => date));
  const again = ({ again: each }: (typeof entries)[number]) =>
    each ? `then every ${each.everyDays} days, ${each.times} times` : '';
  return ok({
    data: entries,
    document: {
      title: `Calendar, ${titleOf(input)}`,
      blocks: [
        {
          is: 'table',
          head: ['day', 'what', ''],
          rows: entries.map((entry) => [paperWeekday(entry.date, displayFor(input)), entry.title, again(entry)]),
        },
        cautionsBlock(eachOnce(entries.flatMap(({ cautions = [] }) => cautions))),
      ],
    },
    csv: csvText(
      [['date', 'what', 'again'], ...entries.map((entry) => [entry.date, entry.title, again(entry)])],
      workshop,
    ),
  });
};
