import { Letterhead, Paper } from '#renderer/print/paper.tsx';
import { sayUnits } from '#shared-calc/words/say-units.ts';
import type { BuildCard, CardStep } from '#shared-calc/papers/build-card.ts';
import { hoursWords } from '#shared-calc/papers/build-paper.ts';
import { CautionList } from './caution-list.tsx';
import { Tick } from './tick.tsx';
import './cards.css';

export interface BuildCardParts {
  readonly title: string;
  readonly letterhead: readonly string[];
  readonly cards: readonly BuildCard[];
}

/** A card a size, in the order in which it is built: what goes in, how deep, and what to mind. */
export function BuildCardPaper({ title, letterhead, cards }: BuildCardParts) {
  return (
    <Paper label="Build card" foot={`Build card, ${title}`} look="large">
      {cards.map((card) => (
        <section key={card.size} class="sheet-of-list">
          <Letterhead title={`Build card ${card.called}`} who={letterhead.slice(0, 1)} />
          <p>
            {title}. {card.tank}
            {card.builds > 1 && `; this card for each of ${card.builds}`}. {card.lifting.join(' ')} About{' '}
            {hoursWords(card.minutes)} of work on each.
          </p>
          {card.steps.map((step, at) => (
            <BuildStep key={step.title} step={step} nth={at + 1} />
          ))}
        </section>
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
    <section class="card-step">
      <h3>
        <Tick /> {nth}. {title}
        {minutes !== undefined && minutes >= 0.5 && <small>{Math.round(minutes)} min</small>}
      </h3>
      {goods.length > 0 && (
        <table class="paper-lines">
          <thead class="unseen">
            <tr>
              <th scope="col">ticked</th>
              <th scope="col">what</th>
              <th scope="col">how much</th>
            </tr>
          </thead>
          <tbody>
            {goods.map(({ line, label, material, amount }) => (
              <tr key={line}>
                <td class="tick-cell">
                  <Tick />
                </td>
                <td>
                  {label}
                  {material !== '' && material.toLowerCase() !== label.toLowerCase() && <small> {material}</small>}
                </td>
                <td class="n">{sayUnits(amount)}</td>
              </tr>
            ))}
          </tbody>
        </table>
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
