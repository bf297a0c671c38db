import { Facts, Letterhead, Paper } from '#renderer/print/paper.tsx';
import { paperWeekday } from '#shared-calc/papers/paper-words.ts';
import type { AnimalsInCard } from '#shared-calc/papers/watch-card.ts';
import { Minded } from './caution-list.tsx';
import { Tick } from './tick.tsx';
import { WideTable } from './wide-table.tsx';
import './cards.css';

export interface AnimalsInParts {
  readonly title: string;
  readonly letterhead: readonly string[];
  readonly card: AnimalsInCard;
}

/** When animals go in, what must be so before, and the days on which somebody looks. */
export function AnimalsInPaper({ title, letterhead, card }: AnimalsInParts) {
  return (
    <Paper label="Animals-in plan" foot={`Animals-in plan, ${title}`} look="large">
      <Letterhead title="Animals-in plan" who={letterhead.slice(0, 1)} />
      <Facts
        facts={[
          ['Job', title],
          ['Animals', card.animals],
          ['Built', paperWeekday(card.build)],
          ['Animals in', `${paperWeekday(card.animalsIn)}, day 0`],
        ]}
      />
      <section>
        <h3>Before they go in</h3>
        <ul class="ticked">
          {card.before.map((says) => (
            <li key={says}>
              <Tick /> {says}
            </li>
          ))}
        </ul>
      </section>
      <Looks card={card} />
      <div class="together">
        <Minded {...card} />
      </div>
    </Paper>
  );
}

function Looks({ card: { looks, lookFor, settleInDays } }: { readonly card: AnimalsInCard }) {
  if (looks.length === 0) {
    return (
      <p>
        The tank settles in for {settleInDays} days before the animals: no watch plan of its own is wanted. Look daily
        for 28 days all the same.
      </p>
    );
  }
  return (
    <section>
      <h3>Days to look</h3>
      <p>The tank has only {settleInDays} days to settle in: each of these days is kept.</p>
      <WideTable label="Days to look">
        <table class="paper-lines to-write">
          <thead>
            <tr>
              <th scope="col">Day</th>
              {lookFor.map((what) => (
                <th key={what} scope="col">
                  {what}
                </th>
              ))}
              <th scope="col">who</th>
            </tr>
          </thead>
          <tbody>
            {looks.map(({ day, date }) => (
              <tr key={day}>
                <th scope="row">
                  {day}
                  <small> {paperWeekday(date)}</small>
                </th>
                {lookFor.map((what) => (
                  <td key={what} />
                ))}
                <td />
              </tr>
            ))}
          </tbody>
        </table>
      </WideTable>
    </section>
  );
}
