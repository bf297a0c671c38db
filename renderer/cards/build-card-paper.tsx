import { Table } from '#renderer/kit/table.tsx';
import { Letterhead, Paper, Sheet } from '#renderer/print/paper.tsx';
import { sayUnits } from '#shared-calc/words/say-units.ts';
import type { BuildCard, CardStep } from '#shared-calc/papers/build-card.ts';
import { hoursWords } from '#shared-calc/papers/build-paper.ts';
import { CautionList } from './caution-list.tsx';
import { BoxToTick, tickColumn } from '#renderer/print/box-to-tick.tsx';
import css from './build-card.module.css';

export interface BuildCardParts {
  readonly title: string;
  readonly letterhead: readonly string[];
  readonly cards: readonly BuildCard[];
}

/** One card a size, in build order: what goes in, how deep, and what to mind. */
export function BuildCardPaper({ title, letterhead, cards }: BuildCardParts) {
  return (
    <Paper label="Build card" foot={`Build card, ${title}`} look="large">
      {cards.map((card) => (
        <Sheet key={card.size} class={css['sheet']} label={`Build card ${card.called}`}>
          <Letterhead title={`Build card ${card.called}`} who={letterhead.slice(0, 1)} />
          <p>
            {title}. {card.tank}
            {card.builds > 1 && `; this card for each of ${card.builds}`}. {card.lifting.join(' ')} About{' '}
            {hoursWords(card.minutes)} of work on each.
          </p>
          {card.steps.map((step, at) => (
            <BuildStep key={step.title} step={step} nth={at + 1} />
          ))}
        </Sheet>
      ))}
    </Paper>
  );
}

function BuildStep({
  step: { title, goods, says, minutes, cautions },
  nth,
}: {
  readonly step: CardStep;
  readonly nth: number;
}) {
  return (
    <section class={css['step']}>
      <h3>
        <BoxToTick /> {nth}. {title}
        {minutes !== undefined && minutes >= 0.5 && <small>{Math.round(minutes)} min</small>}
      </h3>
      {goods.length > 0 && (
        <Table
          look="paper"
          label={title}
          quietHeads
          rows={goods}
          keyOf={({ line }) => line}
          columns={[
            tickColumn,
            {
              head: 'what',
              cell: ({ label, material }) => (
                <>
                  {label}
                  {material !== '' && material.toLowerCase() !== label.toLowerCase() && <small> {material}</small>}
                </>
              ),
            },
            { head: 'how much', figure: true, cell: ({ amount }) => sayUnits(amount) },
          ]}
        />
      )}
      <ul>
        {says.map((sentence) => (
          <li key={sentence}>{sayUnits(sentence)}</li>
        ))}
      </ul>
      <CautionList cautions={cautions} />
    </section>
  );
}
