import { Letterhead, Paper } from '#renderer/print/paper.tsx';
import { paperWeekday } from '#shared-calc/papers/paper-words.ts';
import type { PrepRow } from '#shared-calc/papers/prep-card.ts';
import { CautionList } from './caution-list.tsx';
import { Tick } from './tick.tsx';
import './cards.css';

export interface PrepPlanParts {
  readonly title: string;
  readonly letterhead: readonly string[];
  readonly says: readonly string[];
  readonly rows: readonly PrepRow[];
}

/** What to order, treat, glue, blend and start, day by day, with what to mind at each. */
export function PrepPlanPaper({ title, letterhead, says, rows }: PrepPlanParts) {
  return (
    <Paper label="Prep plan" foot={`Prep plan, ${title}`} look="large">
      <Letterhead title="Prep plan" who={letterhead.slice(0, 1)} />
      <p>{title}.</p>
      {says.map((sentence) => (
        <p key={sentence}>
          <b>{sentence}</b>
        </p>
      ))}
      <table class="paper-lines prep-rows">
        <thead>
          <tr>
            <th scope="col" class="tick-cell">
              <span class="unseen">ticked</span>
            </th>
            <th scope="col">Day</th>
            <th scope="col">Act</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ step, is, act, date, decides, cautions }) => (
            <tr key={`${step} ${is}`}>
              <td class="tick-cell">
                <Tick />
              </td>
              <td class="day">{paperWeekday(date)}</td>
              <td>
                {act}
                {decides && <b> (decides)</b>}
                <CautionList cautions={cautions} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Paper>
  );
}
