import { SettledField, Fields } from '#renderer/kit/field.tsx';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import type { SaidDays } from '#shared-calc/prepare/say-day.ts';
import type { CultureBoard } from '#shared-calc/prepare/culture-board.ts';
import type { CultureState } from './culture-state.ts';
import { paperWeekday } from '#shared-calc/papers/paper-words.ts';
import css from '#renderer/kit/part-page.module.css';
import { said } from '#shared-calc/words/say-entry-fault.ts';
import { MutedLine } from '#renderer/kit/muted.tsx';
import type { FedHere } from '#shared-calc/derive/fed-here.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';

interface FliesParts {
  readonly state: CultureState;
  readonly board: CultureBoard;
  /** What the animals here eat; never fewer flies are wanted. */
  readonly fed: FedHere;
  readonly days: SaidDays;
}

/** Flies wanted a week, and the tubs that supply them. */
export function Flies({ state, board, fed, days }: FliesParts) {
  const settle = (text: string) => {
    const read = said(readMeasure(text, { name: 'Flies a week', stored: 'each', whole: true, low: 0, high: 100_000 }));
    if (!read.ok) return read.fault;
    state.wishFlies(read.value ?? 0);
    return undefined;
  };
  const here = board.standing.filter(({ is }) => is !== 'used up').length;
  return (
    <section>
      <h2>Flies for feeding</h2>
      <Fields look="short">
        <SettledField label="Flies wanted a week" figure text={String(state.flies.value)} settle={settle} />
      </Fields>
      <Fed fed={fed} />
      <p class={css['counted']}>
        Start {board.flyStarts} {board.flyStarts === 1 ? 'tub' : 'tubs'} a week; {board.flyTubs} on the shelf at once,{' '}
        {here} {here === 1 ? 'stands' : 'stand'}.
      </p>
      {board.flyFirst && (
        <p>
          The first week takes more at once: set up {board.flyFirst.tubs} on {paperWeekday(board.flyFirst.on, days)}.
        </p>
      )}
      <MutedLine>One tub in ten fails; none is spared.</MutedLine>
    </section>
  );
}

function Fed({ fed: { aWeek, eaters, unknown } }: { readonly fed: FedHere }) {
  const many = (flies: number) => writeNumber(Math.ceil(flies), 0);
  return (
    <>
      {eaters.length > 0 && (
        <p>
          The animals here eat {many(aWeek)} a week:{' '}
          {eaters.map((each) => `${each.called} ${many(each.aWeek)}`).join(', ')}. Never fewer are planned.
        </p>
      )}
      {unknown.length > 0 && <p>How many are eaten is not known yet: {unknown.join(', ')}.</p>}
    </>
  );
}
