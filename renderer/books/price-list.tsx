import { useState } from 'preact/hooks';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Flag } from '#renderer/kit/flag.tsx';
import { Table } from '#renderer/kit/table.tsx';
import { readMoney } from '#shared-calc/read/read-money.ts';
import type { Pack, PackPrice } from '#shared-calc/records/records.ts';
import { ok } from '#shared-calc/result.ts';
import type { BookContext, BookApi } from './book-api.ts';
import { readDay } from '#shared-calc/read/read-day.ts';
import { TextField, Fields } from '#renderer/kit/field.tsx';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import { isOldPrice, priceOn, pricesOf } from '#shared-calc/buy/pack-prices.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';
import { Muted } from '#renderer/kit/muted.tsx';
import { Unseen } from '#renderer/kit/unseen.tsx';
import { writeDay } from '#shared-calc/calendar/write-day.ts';
import css from './price-list.module.css';

interface PriceListParts {
  readonly pack: Pack;
  /** The pack's name in messages: "T07", "10 L of M01". */
  readonly of: string;
  readonly context: BookContext;
  readonly api: BookApi;
}

/** The past, present and future prices of a pack, each with its first day, and a form for a new one. */
export function PriceList({ pack, of, context, api }: PriceListParts) {
  const prices = pricesOf(context.records, pack.id);
  const now = priceOn(context.records, pack.id, context.today);
  const remove = (price: PackPrice) => api.doAct('remove', { kind: 'packPrice', id: price.id });
  return (
    <>
      {prices.length > 0 && (
        <Table
          label={`Prices of ${of}`}
          rows={prices}
          keyOf={({ id }) => id}
          columns={[
            {
              head: 'from',
              names: true,
              cell: (price) => (
                <>
                  {writeDay(price.from, context.display.dateOrder)}{' '}
                  <Standing price={price} now={now} context={context} />
                </>
              ),
            },
            {
              head: context.workshop.currency,
              figure: true,
              cell: ({ priceCoins }) => showCoins(priceCoins, context.workshop),
            },
            {
              head: <Unseen>what may be done</Unseen>,
              figure: true,
              cell: (price) => (
                <Button
                  look="plain"
                  aria-label={`Remove the price of ${of} from ${writeDay(price.from, context.display.dateOrder)}`}
                  onClick={() => remove(price)}
                >
                  Remove
                </Button>
              ),
            },
          ]}
        />
      )}
      <NewPrice key={pack.id} pack={pack} of={of} context={context} api={api} />
    </>
  );
}

interface StandingParts {
  readonly price: PackPrice;
  readonly now: PackPrice | undefined;
  readonly context: BookContext;
}

function Standing({ price, now, context }: StandingParts) {
  if (price.from > context.today) return <span class={css['later']}>still to come</span>;
  if (price.id !== now?.id) return null;
  if (!isOldPrice(price, context)) return <Muted>holds now</Muted>;
  return (
    <Flag state="old" sign="old">
      old price
    </Flag>
  );
}

function NewPrice({ pack, of, context, api }: PriceListParts) {
  const [price, setPrice] = useState('');
  const [from, setFrom] = useState(writeDay(context.today, context.display.dateOrder));
  const coins = price.trim() === '' ? undefined : said(readMoney(price, context.workshop));
  const day = said(readDay(from, 'From', { ...context, nearest: true }));
  const set = () => {
    if (!coins?.ok || !day.ok) return;
    const { material, amount, supplier } = pack;
    const sold = { material, amount, ...(supplier !== undefined && { supplier }) };
    api.doAct('putPrice', { ...sold, priceCoins: coins.value, from: day.value });
    setPrice('');
  };
  return (
    <>
      <Fields>
        <TextField
          label="New price"
          of={of}
          unit={context.workshop.currency}
          figure
          text={price}
          typing={setPrice}
          enter={set}
          wrong={faultOf(coins ?? ok(0))}
        />
        <TextField label="from" of={of} text={from} typing={setFrom} enter={set} wrong={faultOf(day)} days={context} />
      </Fields>
      <Buttons>
        <Button disabled={!coins?.ok || !day.ok} onClick={set}>
          Set the price
        </Button>
      </Buttons>
    </>
  );
}

function faultOf(read: { readonly ok: true } | { readonly ok: false; readonly fault: string }): string | undefined {
  return read.ok ? undefined : read.fault;
}
