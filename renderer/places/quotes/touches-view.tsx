import { useMemo } from 'preact/hooks';
import type { BookContext } from '#renderer/books/book-api.ts';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { CodedName } from '#renderer/kit/coded-name.tsx';
import { Link } from '#renderer/kit/link.tsx';
import { Table } from '#renderer/kit/table.tsx';
import { packWords } from '#shared-calc/quantity/goods-words.ts';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import { touchesNow, type NewPrice } from '#shared-calc/derive/price-touch.ts';
import { Muted } from '#renderer/kit/muted.tsx';

/** Prices and wages that changed since open quotes were issued, and what that does to them. */
export function TouchesView({ context }: { readonly context: BookContext }) {
  const { workshop } = context;
  const { touches, prices } = useMemo(() => touchesNow(context), [context]);
  const money = (coins: number) => showCoins(coins, workshop);
  const more = (from: number, to: number) => `${to > from ? '+' : ''}${money(to - from)}`;
  return (
    <>
      <Table
        look="ledger"
        caption={`Open quotes that new prices and wages touch, ${workshop.currency}`}
        rows={touches}
        keyOf={({ job }) => job}
        columns={[
          { head: 'Job', names: true, cell: ({ job, title }) => <QuoteLink to={job}>{`${job} ${title}`}</QuoteLink> },
          { head: 'Quote', cell: ({ quote }) => <QuoteLink to={quote}>{quote}</QuoteLink> },
          { head: 'State', cell: ({ state }) => state },
          { head: 'Cost then', figure: true, cell: ({ cost }) => money(cost.from) },
          { head: 'Cost now', figure: true, cell: ({ cost }) => money(cost.to) },
          { head: 'Off our margin', figure: true, cell: ({ cost }) => <b>{more(cost.from, cost.to)}</b> },
          {
            head: 'Left of the price',
            figure: true,
            cell: ({ margin }) => money(margin.to),
          },
          {
            head: 'Were it quoted anew, before tax',
            figure: true,
            cell: ({ net }) => `${money(net.to)} (${more(net.from, net.to)})`,
          },
        ]}
        empty="No new price or wage touches an open quote."
      />
      {prices.length > 0 && <NewPrices prices={prices} context={context} />}
    </>
  );
}

function QuoteLink({ to, children }: { readonly to: string; readonly children: string }) {
  return (
    <Link look="row" href={writeRoute('quotes', to)}>
      {children}
    </Link>
  );
}

function NewPrices({
  prices,
  context: { workshop, display, today },
}: {
  readonly prices: readonly NewPrice[];
  readonly context: BookContext;
}) {
  const money = (coins: number) => showCoins(coins, workshop);
  return (
    <Table
      look="ledger"
      caption={`New prices since then, ${workshop.currency}`}
      rows={prices}
      keyOf={({ pack, beforeCoins }) => `${pack} ${beforeCoins}`}
      columns={[
        {
          head: 'Material',
          names: true,
          cell: ({ material, label }) => (
            <>
              <CodedName code={material} label={label} />
            </>
          ),
        },
        { head: 'Pack', cell: ({ amount, unit }) => packWords(amount, unit, display) },
        {
          head: 'From',
          cell: ({ from }) => (
            <>
              {paperDay(from)}
              {from > today && <Muted>, still to come</Muted>}
            </>
          ),
        },
        { head: 'Before', figure: true, cell: ({ beforeCoins }) => money(beforeCoins) },
        { head: 'Price', figure: true, cell: ({ coins }) => money(coins) },
      ]}
    />
  );
}
