import { Letterhead, Paper } from '#renderer/print/paper.tsx';
import { sayUnits } from '#shared-calc/words/say-units.ts';
import type { TreatmentCard } from '#shared-calc/papers/treatment-card.ts';
import { CautionList } from './caution-list.tsx';
import { Tick } from './tick.tsx';
import { WideTable } from './wide-table.tsx';
import './cards.css';

export interface TreatmentParts {
  readonly letterhead: readonly string[];
  /** `43.51 L of leaves, pressure steam, aim sterile`. */
  readonly what: string;
  /** `119.76 °C at 650 m`. */
  readonly at: string;
  readonly card: TreatmentCard;
}

/** One way of treating leaves, to stand by: a table of minutes and boxes, batch by batch. */
export function TreatmentPaper({ letterhead, what, at, card }: TreatmentParts) {
  return (
    <Paper label="Leaf treatment" foot={`Leaf treatment, ${what}`} look="large">
      <Letterhead title="Leaf treatment" who={letterhead.slice(0, 1)} />
      <p>
        {what}. {at}. Somebody stays by it from the first minute to the last.
      </p>
      <BatchTable card={card} />
      {card.beside.map((says) => (
        <p key={says}>{sayUnits(says)}</p>
      ))}
      <CautionList cautions={card.cautions} />
      <div class="sign-here">
        <p>Core at its hottest, °C, each batch</p>
        <p>Treated by</p>
        <p>Day</p>
      </div>
    </Paper>
  );
}

function BatchTable({ card }: { readonly card: TreatmentCard }) {
  const batches = Array.from({ length: card.batches }, (_, nth) => nth + 1);
  return (
    <WideTable label="Minutes">
      <table class="paper-lines batch-ticks">
        <thead>
          <tr>
            <th scope="col">Part</th>
            <th scope="col" class="n">
              Minutes
            </th>
            <th scope="col" class="n">
              Over at minute
            </th>
            {batches.map((nth) => (
              <th key={nth} scope="col" class="n">
                Batch {nth}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {card.steps.map(({ name, minutes, over }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td class="n">{minutes}</td>
              <td class="n">{over}</td>
              {batches.map((nth) => (
                <td key={nth} class="n">
                  <Tick />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </WideTable>
  );
}
