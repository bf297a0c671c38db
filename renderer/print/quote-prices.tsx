import type { QuoteModel, QuoteModelLine } from '#shared-calc/papers/quote-model.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { quoteTerms } from '#shared-calc/papers/quote-paper.ts';
import { paperMoney } from '#shared-calc/papers/paper-words.ts';

interface PricesParts {
  readonly model: QuoteModel;
  readonly display: Display;
}

/** So many lines at least stand with the sums, so that no page begins with a bare total. */
const WITH_SUMS = 3;

/** Lines, sums and terms of a quote; the last lines and the sums are never parted. */
export function QuotePrices({ model, display }: PricesParts) {
  const split = Math.max(0, model.lines.length - WITH_SUMS);
  const rows = (lines: readonly QuoteModelLine[]) =>
    lines.map((line, at) => <PriceRow key={at} line={line} display={display} />);
  return (
    <>
      <table class="paper-lines">
        <thead>
          <tr>
            <th scope="col">Group</th>
            <th scope="col">What it is</th>
            <th scope="col" class="class">
              Tax class
            </th>
            <th scope="col" class="money">
              Price, {model.currency}
            </th>
          </tr>
        </thead>
        {split > 0 && <tbody>{rows(model.lines.slice(0, split))}</tbody>}
        <tbody class="together">{rows(model.lines.slice(split))}</tbody>
      </table>
      <Totals model={model} display={display} />
      <Terms model={model} />
    </>
  );
}

function PriceRow({ line, display }: { readonly line: QuoteModelLine; readonly display: Display }) {
  return (
    <tr>
      <th scope="row">{line.label}</th>
      <td>{line.what.replaceAll(/ m2\b/g, '\u00a0m²')}</td>
      <td class="class">{line.taxClass}</td>
      <td class="money">{paperMoney(line.price, display)}</td>
    </tr>
  );
}

function Totals({ model, display }: PricesParts) {
  const money = (text: string) => paperMoney(text, display);
  return (
    <table class="totals">
      <tbody>
        <tr>
          <th scope="row">Price before tax</th>
          <td>{money(model.net)}</td>
        </tr>
        {model.tax.map(({ label, share, of, sum }) => (
          <tr key={label}>
            <th scope="row">
              Tax, {label.toLowerCase()}: {share.replace(' ', '\u00a0')} of {money(of)}
            </th>
            <td>{money(sum)}</td>
          </tr>
        ))}
        <tr class="price">
          <th scope="row">Price, {model.currency}</th>
          <td>{money(model.gross)}</td>
        </tr>
        <tr class="after">
          <th scope="row">Deposit with the order</th>
          <td>{money(model.deposit)}</td>
        </tr>
        <tr>
          <th scope="row">At the handover</th>
          <td>{money(model.atHandover)}</td>
        </tr>
      </tbody>
    </table>
  );
}

function Terms({ model }: Pick<PricesParts, 'model'>) {
  return (
    <section class="terms">
      <h3>Terms, and what is not in this price</h3>
      <ul>
        {quoteTerms(model).map((term) => (
          <li key={term}>{term}</li>
        ))}
      </ul>
      {model.payment !== '' && <p>{model.payment}</p>}
    </section>
  );
}
