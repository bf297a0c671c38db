import type { BookContext } from '#renderer/books/book-api.ts';
import { goTo } from '#renderer/frame/go-to.ts';
import { goToBook } from '#renderer/frame/go-to-goods.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { contextMenuOf, type EntryMenu } from '#renderer/kit/context-menu.tsx';
import { Link } from '#renderer/kit/link.tsx';
import { Fields } from '#renderer/kit/field.tsx';
import { FieldEntry } from '#renderer/books/field-entry.tsx';
import type { JobApi } from '#renderer/store/job-api.ts';
import type { StoredLot } from '#shared-calc/derive/store-goods.ts';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import { goodsWords } from '#shared-calc/quantity/goods-words.ts';
import { sayLot } from './say-lot.ts';
import css from './store.module.css';

interface CardParts {
  readonly lot: StoredLot;
  readonly unit: string;
  readonly context: BookContext;
  readonly api: JobApi;
}

const fields = ['sealed', 'bestBefore', 'until', 'coins', 'note'] as const;

/** One lot of goods: what stands in it and for whom; what is written of it can be put right. */
export function LotCard({ lot, unit, context, api }: CardParts) {
  const { stock } = lot;
  const { came, id } = stock.lot;
  return (
    <section class={css['lot']} {...contextMenuOf(() => lotMenu(lot, { api, context }))}>
      <h3>
        {goodsWords(stock.amount, unit, context.display)}, {sayLot(stock, unit, context)}
      </h3>
      <p>
        Came in on {paperDay(came.on, context.display)}
        {came.order !== undefined && (
          <>
            , <Link href={writeRoute('orders', came.order)}>order {came.order}</Link>
          </>
        )}
      </p>
      <Fields>
        {fields.map((field) => (
          <FieldEntry
            key={field}
            kind="move"
            record={{ ...came, sealed: !stock.opened }}
            field={field}
            context={context}
            put={(to) => api.doAct('correctLot', { lot: id, fields: { [field]: to[field] ?? null } })}
          />
        ))}
      </Fields>
    </section>
  );
}

/** The acts of one lot: all of it used or written off, and where it is from. */
function lotMenu(
  { stock: { amount, lot } }: StoredLot,
  { api, context }: Pick<CardParts, 'api' | 'context'>,
): EntryMenu {
  const { of, order } = lot.came;
  const all = { of, amount, lot: lot.id, note: '' };
  return {
    label: `Lot ${lot.id}`,
    acts: [
      { says: 'Use all of it', run: () => void api.doAct('useStock', all) },
      { says: 'Write all of it off', run: () => void api.doAct('wasteStock', all) },
      'line',
      ...goToBook(of, context.records),
      ...(order === undefined ? [] : [goTo(`Order ${order}`, 'orders', order)]),
    ],
  };
}
