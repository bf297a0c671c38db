import { Table } from '#renderer/kit/table.tsx';
import { Letterhead, Paper, SignHere } from '#renderer/print/paper.tsx';
import { sayUnits } from '#shared-calc/words/say-units.ts';
import type { TreatmentCard } from '#shared-calc/papers/treatment-card.ts';
import { whoDecides } from '#shared-calc/words/who-decides.ts';
import { CautionList } from './caution-list.tsx';
import { BoxToTick } from '#renderer/print/box-to-tick.tsx';
import css from './treatment.module.css';

export interface TreatmentParts {
  readonly letterhead: readonly string[];
  /** `43.51 L of leaves, pressure steam, aim sterile`. */
  readonly what: string;
  /** `119.76 °C at 650 m`. */
  readonly at: string;
  readonly card: TreatmentCard;
}

/** One method of treating leaves, for use during the work: a table of minutes and boxes, batch by batch. */
export function TreatmentPaper({ letterhead, what, at, card }: TreatmentParts) {
  return (
    <Paper label="Leaf treatment" foot={`Leaf treatment, ${what}`} look="large">
      <Letterhead title="Leaf treatment" who={letterhead.slice(0, 1)} />
      <p>
        {what}. {at}. Somebody stays by it from the first minute to the last.
      </p>
      <BatchTable card={card} />
      {card.warnings.map(({ says, decides }) => (
        <p key={says}>
          {sayUnits(says)} {whoDecides(decides)}.
        </p>
      ))}
      {card.beside.map((says) => (
        <p key={says}>{sayUnits(says)}</p>
      ))}
      <CautionList cautions={card.cautions} />
      <SignHere lines={['Core at its hottest, °C, each batch', 'Treated by', 'Day']} />
    </Paper>
  );
}

function BatchTable({ card }: { readonly card: TreatmentCard }) {
  const batches = Array.from({ length: card.batches }, (_, nth) => nth + 1);
  return (
    <Table
      look="paper"
      class={css['batches']}
      scroll="Minutes"
      rows={card.steps}
      keyOf={({ name }) => name}
      columns={[
        { head: 'Part', names: true, cell: ({ name }) => name },
        { head: 'Minutes', figure: true, cell: ({ minutes }) => minutes },
        { head: 'Over at minute', figure: true, cell: ({ over }) => over },
        ...batches.map((nth) => ({ head: `Batch ${nth}`, figure: true, cell: () => <BoxToTick /> })),
      ]}
    />
  );
}
