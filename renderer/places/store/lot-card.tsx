import type { BookContext } from '#renderer/books/book-api.ts';
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
export function LotCard({ lot: { stock }, unit, context, api }: CardParts) {
  const { came, id } = stock.lot;
  return (
    <section class={css['lot']}>
      <h3>
        {goodsWords(stock.amount, unit, context.display)}, {sayLot(stock, unit, context)}
      </h3>
      <p>
        Came in on {paperDay(came.on, context.display)}
        {came.order !== undefined && `, order ${came.order}`}
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
