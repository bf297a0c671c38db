import { useMemo } from 'preact/hooks';
import type { BookContext } from '#renderer/books/book-api.ts';
import { ChoiceField, Fields } from '#renderer/kit/field.tsx';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { Fault } from '#renderer/kit/note.tsx';
import { Table } from '#renderer/kit/table.tsx';
import { changedQuote } from '#shared-calc/jobs/changed-quote.ts';
import { frozenHouses, type QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import { joinLines } from '#shared-calc/bench/column-lines.ts';
import { frozenCalled } from '#shared-calc/papers/quote-sizes.ts';
import type { ChangedBy, WhatChanged } from '#shared-calc/price/what-changed.ts';
import { calledByLines } from '#shared-calc/words/called-by-words.ts';
import type { Called } from '#shared-calc/words/called.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';
import { changedBoxes, type ChangedBox } from './changed-boxes.ts';
import { revisionName, type ReadQuote } from './issued-quotes.ts';
import css from './quotes.module.css';

interface ChangedParts {
  readonly from: ReadQuote;
  readonly to: ReadQuote;
  /** Every quote issued for the job. */
  readonly quotes: readonly ReadQuote[];
  readonly context: BookContext;
}

const doers: Readonly<Record<ChangedBy, string>> = { client: 'the client', us: 'us', supplier: 'the suppliers' };

/** What changed between two issued quotes, by line and by who caused it; the parts add up to the whole difference. */
export function ChangedView({ from, to, quotes, context }: ChangedParts) {
  const options = quotes.map(({ quote }) => ({ value: quote.id, label: revisionName(quote) }));
  const go = (one: string, other: string) => (location.hash = writeRoute('quotes', 'changed', one, other));
  return (
    <div class={css['changed']}>
      <Fields>
        <ChoiceField label="From" value={from.quote.id} options={options} choose={(id) => go(id, to.quote.id)} />
        <ChoiceField label="To" value={to.quote.id} options={options} choose={(id) => go(from.quote.id, id)} />
      </Fields>
      {from.body && to.body ? (
        <Changed from={from.body} to={to.body} context={context} />
      ) : (
        <Fault>One of the two cannot be read any more.</Fault>
      )}
    </div>
  );
}

interface BodiesParts {
  readonly from: QuoteBody;
  readonly to: QuoteBody;
  readonly context: BookContext;
}

function calledInQuote(body: QuoteBody): Called {
  const { columns } = body;
  const lines = joinLines(frozenHouses(body).map((house) => house.lines));
  return calledByLines({ lines, columns: columns.map((column) => ({ key: column.key, label: frozenCalled(column) })) });
}

function Changed({ from, to, context }: BodiesParts) {
  const changed = useMemo(() => changedQuote(from, to), [from, to]);
  if (!changed.ok) return <Fault>{sayOrderFault(changed.fault, calledInQuote(to))}</Fault>;
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

function LineTable({ changed, from, to, context: { workshop } }: LinesParts) {
  const money = (coins: number) => showCoins(coins, workshop);
  const signed = (coins: number) => `${coins > 0 ? '+' : ''}${money(coins)}`;
  const byWhom = (by: ChangedBy) => ({ cells: [{ span: 3, says: `By ${doers[by]}` }, signed(changed.net[by]), ''] });
  return (
    <Table
      look="ledger"
      caption={`Prices before tax, ${workshop.currency}`}
      rows={changed.lines}
      keyOf={(_, at) => at}
      columns={[
        { head: 'Line', names: true, cell: ({ label }) => label },
        { head: 'From', figure: true, cell: (line) => money(line.from) },
        { head: 'To', figure: true, cell: (line) => money(line.to) },
        { head: 'Difference', figure: true, cell: (line) => signed(line.to - line.from) },
        { head: 'By', cell: ({ by }) => doers[by] },
      ]}
      empty="No line changed its price."
      foot={[
        ...(['client', 'us', 'supplier'] as const).map(byWhom),
        {
          sum: true,
          cells: ['Price before tax', money(from.sums.netCoins), money(to.sums.netCoins), signed(changed.sum), ''],
        },
      ]}
    />
  );
}

function BoxTable({ boxes }: { readonly boxes: readonly ChangedBox[] }) {
  if (boxes.length === 0) return null;
  return (
    <Table
      look="ledger"
      caption="Written otherwise"
      rows={boxes}
      keyOf={({ what }) => what}
      columns={[
        { head: 'What', names: true, cell: ({ what }) => what },
        { head: 'From', cell: ({ from }) => from },
        { head: 'To', cell: ({ to }) => to },
        { head: 'By', cell: ({ by }) => doers[by] },
      ]}
    />
  );
}
