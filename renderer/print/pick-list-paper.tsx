import type { PickList, PickRow } from '#shared-calc/papers/pick-list.ts';
import { readUnits } from '#shared-calc/quantity/figure-words.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { Letterhead, Paper } from './paper.tsx';

export interface PickListPaperParts {
  /** `J02 Reading room` */
  readonly title: string;
  readonly letterhead: readonly string[];
  readonly lists: readonly PickList[];
  readonly display: Display;
}

/** A page a size: what to have ready on build day, in the order of use, to be ticked with wet hands. */
export function PickListPaper({ title, letterhead, lists, display }: PickListPaperParts) {
  return (
    <Paper label="Pick list" foot={`Pick list, ${title}`} look="large">
      {lists.map((list) => (
        <section key={list.size} class="sheet-of-list">
          <Letterhead title={`Pick list ${list.called}`} who={letterhead.slice(0, 1)} />
          <p>
            {title}. {list.tank}
            {list.builds > 1 && `; this list for each of ${list.builds}`}.
          </p>
          <table class="paper-lines pick">
            <thead>
              <tr>
                <th scope="col">Step</th>
                <th scope="col" class="to-tick">
                  <span class="unseen">ticked</span>
                </th>
                <th scope="col">What</th>
                <th scope="col" class="n">
                  How much
                </th>
                <th scope="col">Where from</th>
                <th scope="col">Who brings it</th>
              </tr>
            </thead>
            {[...Map.groupBy(list.rows, (row) => row.section)].map(([section, rows]) => (
              <tbody key={section}>
                {rows.map((row, at) => (
                  <TickRow
                    key={row.line}
                    row={row}
                    step={at === 0 ? section : undefined}
                    of={rows.length}
                    display={display}
                  />
                ))}
              </tbody>
            ))}
          </table>
        </section>
      ))}
    </Paper>
  );
}

interface TickRowParts {
  readonly row: PickRow;
  /** The step of the build that the row is the first of. */
  readonly step: string | undefined;
  /** How many rows the step has. */
  readonly of: number;
  readonly display: Display;
}

function TickRow({ row, step, of, display }: TickRowParts) {
  return (
    <tr>
      {step !== undefined && (
        <th scope="rowgroup" rowSpan={of}>
          {step}
        </th>
      )}
      <td class="to-tick">
        <span />
      </td>
      <td>
        {row.label}
        {row.material.toLowerCase() !== row.label.toLowerCase() && <small> {row.material}</small>}
      </td>
      <td class="n">{readUnits(row.amount, display).replace(/\u00a0each$/, '')}</td>
      <td>{row.from}</td>
      <td>{row.brings}</td>
    </tr>
  );
}
