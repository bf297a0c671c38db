import type { BookContext } from '#renderer/books/book-hands.ts';
import { showCoins } from '#renderer/books/money-field.ts';
import type { ShoppingRun } from '#shared-calc/buy/shopping-run.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { ChosenRun } from '#shared-calc/buy/chosen-packs.ts';

interface SumsParts {
  readonly run: ChosenRun;
  /** The same at its best. */
  readonly best: ShoppingRun;
  readonly jobs: number;
  readonly context: BookContext;
}

/** What buying together comes to, and what it saves against each job alone, in goods and landed. */
export function RunSums({ run, best, jobs, context: { workshop } }: SumsParts) {
  const money = (coins: number) => showCoins(coins, workshop);
  const saved = (alone: number, together: number) =>
    `${money(alone - together)}${alone > 0 ? ` (${writeNumber(((alone - together) / alone) * 100, 1, workshop)}\u00a0%)` : ''}`;
  const over = run.landedTogetherCoins - best.landedTogetherCoins;
  return (
    <table class="run-sums">
      <caption>{jobs === 1 ? 'One job' : `${jobs} jobs bought together`}</caption>
      <thead>
        <tr>
          <td />
          <th scope="col" class="n">
            together, {workshop.currency}
          </th>
          <th scope="col" class="n">
            each alone
          </th>
          <th scope="col" class="n">
            saved
          </th>
        </tr>
      </thead>
      <tbody>
        <tr>
          <th scope="row">Goods</th>
          <td class="n">{money(run.togetherCoins)}</td>
          <td class="n">{money(run.aloneCoins)}</td>
          <td class="n">{saved(run.aloneCoins, run.togetherCoins)}</td>
        </tr>
        <tr class="landed">
          <th scope="row">Landed, with carriage</th>
          <td class="n">{money(run.landedTogetherCoins)}</td>
          <td class="n">{money(run.landedAloneCoins)}</td>
          <td class="n">{saved(run.landedAloneCoins, run.landedTogetherCoins)}</td>
        </tr>
        {over !== 0 && (
          <tr>
            <th scope="row">Packs by hand against the least goods</th>
            <td class="n">
              {over > 0 ? '+' : ''}
              {money(over)}
            </td>
            <td />
            <td />
          </tr>
        )}
      </tbody>
    </table>
  );
}
