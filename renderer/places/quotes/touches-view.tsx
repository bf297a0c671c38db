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
import { houseTouches } from '#shared-calc/derive/house-touch.ts';
import type { FromTo } from '#shared-calc/derive/job-effect.ts';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { changeWords } from '#shared-calc/papers/house-said.ts';
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
      <HouseTouches context={context} />
      {prices.length > 0 && <NewPrices prices={prices} context={context} />}
    </>
  );
}

/** What the house does to open quotes that were issued before it changed. */
function HouseTouches({ context }: { readonly context: BookContext }) {
  const { workshop, display } = context;
  const touches = useMemo(() => houseTouches(context), [context]);
  const money = (coins: number) => showCoins(coins, workshop);
  const more = ({ from, to }: FromTo) => `${money(to)} (${to > from ? '+' : ''}${money(to - from)})`;
  if (touches.length === 0) return null;
  return (
    <Table
      look="ledger"
      caption={`Open quotes that the house has moved on from, ${workshop.currency}`}
      rows={touches}
      keyOf={({ quote }) => quote}
      columns={[
        { head: 'Job', names: true, cell: ({ job }) => <QuoteLink to={job.id}>{jobName(job)}</QuoteLink> },
        { head: 'Quote', cell: ({ quote }) => <QuoteLink to={quote}>{quote}</QuoteLink> },
        { head: 'Since then', cell: ({ changes }) => changes.map((each) => changeWords(each, display)).join('; ') },
        { head: 'Cost', figure: true, cell: ({ sums }) => (sums.ok ? more(sums.value.cost) : 'not known yet') },
        {
          head: 'Were it quoted anew, before tax',
          figure: true,
          cell: ({ sums }) => (sums.ok ? more(sums.value.net) : 'not known yet'),
        },
      ]}
    />
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
              {paperDay(from, display)}
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
