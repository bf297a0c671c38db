import { useMemo } from 'preact/hooks';
import type { BookContext } from '#renderer/books/book-hands.ts';
import { showCoins } from '#renderer/books/money-field.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { packWords } from '#shared-calc/quantity/goods-words.ts';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import { touchesNow, type NewPrice, type PriceTouch } from '#shared-calc/derive/price-touch.ts';

/** Prices that changed since open quotes were issued, and what that does to them and to jobs not bought yet. */
export function TouchesView({ context }: { readonly context: BookContext }) {
  const { workshop } = context;
  const { touches, prices } = useMemo(() => touchesNow(context), [context]);
  return (
    <>
      <table class="ledger">
        <caption>Open quotes and jobs not bought yet that new prices touch, {workshop.currency}</caption>
        <thead>
          <tr>
            <th scope="col">Job</th>
            <th scope="col">Quote</th>
            <th scope="col">State</th>
            <th scope="col" class="n">
              Cost then
            </th>
            <th scope="col" class="n">
              Cost now
            </th>
            <th scope="col" class="n">
              Off our margin
            </th>
            <th scope="col" class="n">
              Were it quoted anew, before tax
            </th>
          </tr>
        </thead>
        <tbody>
          {touches.map((touch) => (
            <TouchRow key={touch.job} touch={touch} context={context} />
          ))}
          {touches.length === 0 && (
            <tr>
              <td colSpan={7}>No new price touches an open quote or a job that waits to be bought for.</td>
            </tr>
          )}
        </tbody>
      </table>
      {prices.length > 0 && <NewPrices prices={prices} context={context} />}
    </>
  );
}

function TouchRow({ touch, context: { workshop } }: { readonly touch: PriceTouch; readonly context: BookContext }) {
  const { job, title, state, quote, cost, net } = touch;
  const money = (coins: number) => showCoins(coins, workshop);
  const more = (from: number, to: number) => `${to > from ? '+' : ''}${money(to - from)}`;
  return (
    <tr>
      <th scope="row">
        <a class="row-link" href={writeRoute('quotes', job)}>
          {job} {title}
        </a>
      </th>
      <td>
        {quote !== undefined && (
          <a class="row-link" href={writeRoute('quotes', quote)}>
            {quote}
          </a>
        )}
      </td>
      <td>{state}</td>
      <td class="n">{money(cost.from)}</td>
      <td class="n">{money(cost.to)}</td>
      <td class="n strong">{more(cost.from, cost.to)}</td>
      <td class="n">
        {money(net.to)} ({more(net.from, net.to)})
      </td>
    </tr>
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
    <table class="ledger">
      <caption>New prices since then, {workshop.currency}</caption>
      <thead>
        <tr>
          <th scope="col">Material</th>
          <th scope="col">Pack</th>
          <th scope="col">From</th>
          <th scope="col" class="n">
            Before
          </th>
          <th scope="col" class="n">
            Price
          </th>
        </tr>
      </thead>
      <tbody>
        {prices.map(({ material, label, amount, unit, from, beforeCoins, coins }) => (
          <tr key={`${material} ${amount} ${from}`}>
            <th scope="row">
              <span class="code">{material}</span> {label}
            </th>
            <td>{packWords(amount, unit, display)}</td>
            <td>
              {paperDay(from)}
              {from > today && <span class="aside">, still to come</span>}
            </td>
            <td class="n">{money(beforeCoins)}</td>
            <td class="n">{money(coins)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
