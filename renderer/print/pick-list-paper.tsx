import { Table } from '#renderer/kit/table.tsx';
import type { PickList } from '#shared-calc/papers/pick-list.ts';
import { readUnits } from '#shared-calc/quantity/figure-words.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { tickColumn } from './box-to-tick.tsx';
import { Letterhead, Paper, Sheet } from './paper.tsx';
import css from './pick-list-paper.module.css';

export interface PickListPaperParts {
  /** `J02 Reading room` */
  readonly title: string;
  readonly letterhead: readonly string[];
  readonly lists: readonly PickList[];
  readonly display: Display;
}

/** One page a size: what to have ready on build day, in order of use, to be ticked with wet hands. */
export function PickListPaper({ title, letterhead, lists, display }: PickListPaperParts) {
  return (
    <Paper label="Pick list" foot={`Pick list, ${title}`} look="large">
      {lists.map((list) => (
        <Sheet key={list.size} label={`Pick list ${list.called}`}>
          <Letterhead title={`Pick list ${list.called}`} who={letterhead.slice(0, 1)} />
          <p>
            {title}. {list.tank}
            {list.builds > 1 && `; this list for each of ${list.builds}`}.
          </p>
          <Table
            look="paper"
            class={css['pick']}
            label={`Pick list ${list.called}`}
            beside="Step"
            groups={[...Map.groupBy(list.rows, (row) => row.section)].map(([section, rows]) => ({
              key: section,
              head: section,
              rows,
            }))}
            keyOf={({ line }) => line}
            columns={[
              tickColumn,
              {
                head: 'What',
                cell: ({ label, material }) => (
                  <>
                    {label}
                    {material.toLowerCase() !== label.toLowerCase() && <small> {material}</small>}
                  </>
                ),
              },
              {
                head: 'How much',
                figure: true,
                cell: ({ amount }) => readUnits(amount, display).replace(/\u00a0each$/, ''),
              },
              { head: 'Where from', cell: ({ from }) => from },
              { head: 'Who brings it', cell: ({ brings }) => brings },
            ]}
          />
        </Sheet>
      ))}
    </Paper>
  );
}
