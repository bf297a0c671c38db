import type { BookContext } from '#renderer/books/book-api.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { FactList } from '#renderer/kit/fact-list.tsx';
import { PanelHead } from '#renderer/kit/side-panel.tsx';
import { writeDay } from '#shared-calc/calendar/write-day.ts';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import { packWords } from '#shared-calc/quantity/goods-words.ts';
import { sayListRowFault } from '#shared-calc/words/say-list-fault.ts';
import type { RowChoice } from '#shared-calc/acts/row-choice.ts';
import type { ShownRow } from './list-rows.ts';
import type { ListState } from './list-state.ts';
import { goodsName } from './row-edit.ts';
import { sayChange } from './say-list.ts';

interface PanelParts {
  readonly shown: ShownRow;
  readonly state: ListState;
  readonly context: BookContext;
}

/** A row as the list has it, what it gives the book or why it is left, and what can be done with it. */
export function RowPanel({ shown, state, context }: PanelParts) {
  const { id, row, left } = shown;
  const { written } = row;
  return (
    <>
      <PanelHead where={id} title={row.label || row.article || row.material} />
      {left && <p>{sayListRowFault(left)}</p>}
      <Gives shown={shown} context={context} />
      <RowActs shown={shown} state={state} />
      <section>
        <h3>In the list</h3>
        <FactList
          facts={(
            [
              ['article', row.article],
              ['pack', written.pack],
              ['price', written.price],
              ['from', written.from],
            ] as const
          ).filter(([, is]) => is !== '')}
        />
      </section>
    </>
  );
}

function RowActs({ shown, state }: Omit<PanelParts, 'context'>) {
  const { row, placed, suggested, choice = {} } = shown;
  const choose = (next: RowChoice) => state.choose([[row.row, next]]);
  const isNew = choice.act === 'new material' || placed?.material !== undefined || row.label === '';
  return (
    <Buttons>
      {suggested && (
        <Button onClick={() => choose({ ...choice, material: suggested.id })}>It is {goodsName(suggested)}</Button>
      )}
      {!isNew && <Button onClick={() => choose({ ...choice, act: 'new material' })}>Make a new material</Button>}
      {choice.act !== 'leave' && <Button onClick={() => choose({ ...choice, act: 'leave' })}>Leave it out</Button>}
      {shown.choice && <Button onClick={() => choose({})}>As the list has it</Button>}
    </Buttons>
  );
}

function Gives({ shown: { placed, goods }, context }: Omit<PanelParts, 'state'>) {
  if (!placed) return null;
  const { material, known, pack, amount, unit, beforeCoins, priceCoins, from } = placed;
  const { workshop, display } = context;
  const its = goods.find(({ id }) => id === material);
  const own = packWords(amount, unit, display);
  const asWritten = packWords(pack.amount, pack.unit, display);
  const money = (coins: number) => `${showCoins(coins, workshop)} ${workshop.currency}`.trimEnd();
  return (
    <section>
      <h3>Gives the book</h3>
      <FactList
        facts={[
          ['of', its ? goodsName(its) : 'a new material'],
          ['pack', `${own === asWritten ? own : `${asWritten}, ${own}`}${known ? '' : ', new'}`],
          ...(beforeCoins === undefined ? [] : [['before', money(beforeCoins)] as const]),
          ['price', `${money(priceCoins)} ${sayChange(placed)}`.trimEnd()],
          ['from', writeDay(from, display.dateOrder)],
        ]}
      />
    </section>
  );
}
