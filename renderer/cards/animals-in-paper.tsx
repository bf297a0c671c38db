import { Table } from '#renderer/kit/table.tsx';
import { Facts, Letterhead, Paper } from '#renderer/print/paper.tsx';
import { paperWeekday } from '#shared-calc/papers/paper-words.ts';
import type { AnimalsInCard } from '#shared-calc/papers/watch-card.ts';
import { Minded } from './caution-list.tsx';
import { BoxToTick, TickList } from '#renderer/print/box-to-tick.tsx';
import { toWrite, writeTable } from '#renderer/print/to-write.ts';
import css from '#renderer/print/paper.module.css';

export interface AnimalsInParts {
  readonly title: string;
  readonly letterhead: readonly string[];
  readonly card: AnimalsInCard;
}

/** When animals go in, what must be true before, and the dates of the checks. */
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
        <TickList>
          {card.before.map((says) => (
            <li key={says}>
              <BoxToTick /> {says}
            </li>
          ))}
        </TickList>
      </section>
      <Looks card={card} />
      <div class={css['together']}>
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
      <Table
        look="paper"
        class={writeTable}
        scroll="Days to look"
        rows={looks}
        keyOf={({ day }) => day}
        columns={[
          {
            head: 'Day',
            names: true,
            cell: ({ day, date }) => (
              <>
                {day}
                <small> {paperWeekday(date)}</small>
              </>
            ),
          },
          ...[...lookFor, 'who'].map(toWrite),
        ]}
      />
    </section>
  );
}
