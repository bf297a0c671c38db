import type { BookContext } from '#renderer/books/book-hands.ts';
import { showCoins } from '#renderer/books/money-field.ts';
import type { QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';

export interface InsideParts {
  readonly body: QuoteBody;
  readonly context: BookContext;
}

/** For the builder alone: cost, margin and price of each line, and the hours. */
export function InsideTable({ body, context: { workshop } }: InsideParts) {
  const { lines, costCoins, netCoins, grossCoins, hours } = body.sums;
  const money = (coins: number) => showCoins(coins, workshop);
  const share = (part: number) => `${writeNumber(part * 100, 1, workshop)}\u00a0%`;
  const reserves = lines.reduce((sum, { reserveCoins }) => sum + reserveCoins, 0);
  return (
    <section>
      <h3>For us alone, {workshop.currency}</h3>
      <table class="told">
        <thead>
          <tr>
            <th scope="col">Line</th>
            <th scope="col" class="n">
              Cost
            </th>
            <th scope="col" class="n">
              Margin
            </th>
            <th scope="col" class="n">
              Price
            </th>
          </tr>
        </thead>
        <tbody>
          {lines.map(({ label, costCoins: cost, margin, priceCoins }, at) => (
            <tr key={at}>
              <th scope="row">{label}</th>
              <td class="n">{money(cost)}</td>
              <td class="n">{share(margin)}</td>
              <td class="n">{money(priceCoins)}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr class="sum">
            <th scope="row">Before tax</th>
            <td class="n">{money(costCoins)}</td>
            <td class="n">{netCoins > 0 ? share((netCoins - costCoins) / netCoins) : ''}</td>
            <td class="n">{money(netCoins)}</td>
          </tr>
        </tfoot>
      </table>
      <p class="hint">
        {writeNumber(hours, 2, workshop)} hours charged; price with tax {money(grossCoins)}
        {reserves > 0 && `; reserves of ${money(reserves)} are in the prices`}.
      </p>
    </section>
  );
}
