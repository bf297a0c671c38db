import { Table } from '#renderer/kit/table.tsx';
import { Letterhead, Paper } from '#renderer/print/paper.tsx';
import { paperWeekday } from '#shared-calc/papers/paper-words.ts';
import type { PrepRow } from '#shared-calc/papers/prep-card.ts';
import { CautionList } from './caution-list.tsx';
import { tickColumn } from '#renderer/print/box-to-tick.tsx';
import css from './prep-plan.module.css';

export interface PrepPlanParts {
  readonly title: string;
  readonly letterhead: readonly string[];
  readonly says: readonly string[];
  readonly rows: readonly PrepRow[];
}

/** What to order, treat, glue, blend and start, day by day, with the cautions of each. */
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
      <Table
        look="paper"
        class={css['rows']}
        label="Prep plan"
        rows={rows}
        keyOf={({ step, is }) => `${step} ${is}`}
        columns={[
          tickColumn,
          { head: 'Day', look: css['day'], cell: ({ date }) => paperWeekday(date) },
          {
            head: 'Act',
            cell: ({ act, decides, cautions }) => (
              <>
                {act}
                {decides && <b> (decides)</b>}
                <CautionList cautions={cautions} />
              </>
            ),
          },
        ]}
      />
    </Paper>
  );
}
