import { useMemo } from 'preact/hooks';
import type { BookContext } from '#renderer/books/book-hands.ts';
import { ChoiceEntry } from '#renderer/books/entry.tsx';
import { showCoins } from '#renderer/books/money-field.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { changedQuote } from '#shared-calc/jobs/changed-quote.ts';
import type { QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import { frozenCalled } from '#shared-calc/papers/quote-sizes.ts';
import type { ChangedBy, WhatChanged } from '#shared-calc/price/what-changed.ts';
import { calledByLines } from '#shared-calc/words/called-by-words.ts';
import type { Called } from '#shared-calc/words/called.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';
import { changedBoxes, type ChangedBox } from './changed-boxes.ts';
import { revisionName, type ReadQuote } from './issued-quotes.ts';

interface ChangedParts {
  readonly from: ReadQuote;
  readonly to: ReadQuote;
  /** All that was issued for the job. */
  readonly quotes: readonly ReadQuote[];
  readonly context: BookContext;
}

const doers: Readonly<Record<ChangedBy, string>> = { client: 'the client', us: 'us', supplier: 'the suppliers' };

/** What changed between two issued quotes, by line and by whose doing; the parts make the whole difference. */
export function ChangedView({ from, to, quotes, context }: ChangedParts) {
  const options = quotes.map(({ quote }) => ({ value: quote.id, label: revisionName(quote) }));
  const go = (one: string, other: string) => (location.hash = writeRoute('quotes', 'changed', one, other));
  return (
    <div class="changed">
      <div class="entries">
        <ChoiceEntry label="From" value={from.quote.id} options={options} choose={(id) => go(id, to.quote.id)} />
        <ChoiceEntry label="To" value={to.quote.id} options={options} choose={(id) => go(from.quote.id, id)} />
      </div>
      {from.body && to.body ? (
        <Changed from={from.body} to={to.body} context={context} />
      ) : (
        <p class="rule-fault">One of the two cannot be read any more.</p>
      )}
    </div>
  );
}

interface BodiesParts {
  readonly from: QuoteBody;
  readonly to: QuoteBody;
  readonly context: BookContext;
}

function calledInQuote({ lines, columns }: QuoteBody): Called {
  return calledByLines({ lines, columns: columns.map((column) => ({ key: column.key, label: frozenCalled(column) })) });
}

function Changed({ from, to, context }: BodiesParts) {
  const changed = useMemo(() => changedQuote(from, to), [from, to]);
  if (!changed.ok) return <p class="rule-fault">{sayOrderFault(changed.fault, calledInQuote(to))}</p>;
  return (
    <>
      <LineTable changed={changed.value} from={from} to={to} context={context} />
      <BoxTable boxes={changedBoxes(from, to)} />
    </>
  );
}

interface LinesParts extends BodiesParts {
  readonly changed: WhatChanged;
}

function LineTable({ changed, from, to, context }: LinesParts) {
  const { workshop } = context;
  const signed = (coins: number) => `${coins > 0 ? '+' : ''}${showCoins(coins, workshop)}`;
  const money = (coins: number) => showCoins(coins, workshop);
  return (
    <table class="ledger">
      <caption>Prices before tax, {workshop.currency}</caption>
      <thead>
        <tr>
          <th scope="col">Line</th>
          <th scope="col" class="n">
            From
          </th>
          <th scope="col" class="n">
            To
          </th>
          <th scope="col" class="n">
            Difference
          </th>
          <th scope="col">By</th>
        </tr>
      </thead>
      <tbody>
        {changed.lines.map((line, at) => (
          <tr key={at}>
            <th scope="row">{line.label}</th>
            <td class="n">{money(line.from)}</td>
            <td class="n">{money(line.to)}</td>
            <td class="n">{signed(line.to - line.from)}</td>
            <td>{doers[line.by]}</td>
          </tr>
        ))}
        {changed.lines.length === 0 && (
          <tr>
            <td colSpan={5}>No line changed its price.</td>
          </tr>
        )}
      </tbody>
      <LineSums changed={changed} from={from} to={to} context={context} />
    </table>
  );
}

function LineSums({ changed, from, to, context: { workshop } }: LinesParts) {
  const signed = (coins: number) => `${coins > 0 ? '+' : ''}${showCoins(coins, workshop)}`;
  const money = (coins: number) => showCoins(coins, workshop);
  return (
    <tfoot>
      {(['client', 'us', 'supplier'] as const).map((by) => (
        <tr key={by}>
          <th scope="row" colSpan={3}>
            By {doers[by]}
          </th>
          <td class="n">{signed(changed.net[by])}</td>
          <td />
        </tr>
      ))}
      <tr class="sum">
        <th scope="row">Price before tax</th>
        <td class="n">{money(from.sums.netCoins)}</td>
        <td class="n">{money(to.sums.netCoins)}</td>
        <td class="n">{signed(changed.sum)}</td>
        <td />
      </tr>
    </tfoot>
  );
}

function BoxTable({ boxes }: { readonly boxes: readonly ChangedBox[] }) {
  if (boxes.length === 0) return null;
  return (
    <table class="ledger">
      <caption>Written otherwise</caption>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">From</th>
          <th scope="col">To</th>
          <th scope="col">By</th>
        </tr>
      </thead>
      <tbody>
        {boxes.map(({ what, from, to, by }) => (
          <tr key={what}>
            <th scope="row">{what}</th>
            <td>{from}</td>
            <td>{to}</td>
            <td>{doers[by]}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
