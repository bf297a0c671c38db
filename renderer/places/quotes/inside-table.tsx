import type { BookContext } from '#renderer/books/book-api.ts';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import { Hint } from '#renderer/kit/note.tsx';
import { Table } from '#renderer/kit/table.tsx';
import type { QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import { atLeast, isPart, marginIn, sumLabel, WHOLE, type QuotePart } from '#shared-calc/papers/quote-part.ts';
import { sayPeople } from '#shared-calc/price/say-people.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';

export interface InsideParts {
  readonly body: QuoteBody;
  readonly context: BookContext;
  /** Of a draft: what it lacks. */
  readonly part?: QuotePart | undefined;
}

/** Only for the builder: cost, margin and price of each line, and the hours. */
export function InsideTable({ body, part = WHOLE, context: { workshop } }: InsideParts) {
  const { lines, costCoins, netCoins, grossCoins, hours } = body.sums;
  const named = sayPeople(body.sums, workshop);
  const money = (coins: number) => showCoins(coins, workshop);
  const share = (of: number | undefined) => (of === undefined ? '' : `${writeNumber(of * 100, 1, workshop)}\u00a0%`);
  const earned = netCoins > 0 && !isPart(part) ? share((netCoins - costCoins) / netCoins) : '';
  const reserves = lines.reduce((sum, { reserveCoins }) => sum + reserveCoins, 0);
  return (
    <section>
      <h3>For us alone, {workshop.currency}</h3>
      <Table
        label="For us alone"
        rows={lines}
        keyOf={(_, at) => at}
        columns={[
          { head: 'Line', names: true, cell: ({ label }) => label },
          { head: 'Cost', figure: true, cell: (line) => money(line.costCoins) },
          { head: 'Margin', figure: true, cell: (line) => share(marginIn(part, line)) },
          { head: 'Price', figure: true, cell: ({ priceCoins }) => money(priceCoins) },
        ]}
        foot={[{ sum: true, cells: [sumLabel('Before tax', part), money(costCoins), earned, money(netCoins)] }]}
      />
      <Hint>
        {writeNumber(hours, 2, workshop)} hours charged{named !== '' && ` (${named})`}; price with tax{' '}
        {atLeast(money(grossCoins), part)}
        {reserves > 0 && `; reserves of ${money(reserves)} are in the prices`}.
      </Hint>
    </section>
  );
}
