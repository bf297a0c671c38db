import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { heading, paragraph } from './document.ts';
import { titleOf, type MakePaper } from './paper-input.ts';
import { quoteCsv } from './quote-csv.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import { sayPeople } from '#shared-calc/price/say-people.ts';
import { ok } from '#shared-calc/result.ts';
import { quoteModel } from './quote-model.ts';
import type { QuoteSums } from '#shared-calc/price/quote-sums.ts';
import { atLeast, isPart, marginIn, partData, sayEachLack, sumLabel } from './quote-part.ts';
import { printedQuote, quoteCautions, type PrintedQuote } from './quote-paper.ts';

/** For the builder alone: cost, margin and price of each line, the reserves and the hours. */
export const insidePaper: MakePaper = (input) => {
  const printed = printedQuote(input);
  if (!printed.ok) return printed;
  const { body, part } = printed.value;
  const { sums, workshop } = body;
  const { lines, costCoins, netCoins, grossCoins, hours } = sums;
  const named = sayPeople(sums, workshop);
  const money = (coins: number) => coinsText(coins, workshop.coinDecimals);
  const share = (of: number | undefined) => (of === undefined ? '' : `${writeNumber(of * 100, 1, workshop)} %`);
  const reserves = reservesOf(sums);
  const earned = netCoins > 0 && !isPart(part) ? share((netCoins - costCoins) / netCoins) : '';
  const total = [sumLabel('Before tax', part), money(costCoins), earned];
  const lacks = sayEachLack(part);
  const reserveNote = reserves > 0 ? `; reserves of ${money(reserves)} are in the prices` : '';
  return ok({
    data: insideData(printed.value),
    document: {
      title: `For us alone, ${titleOf(input)}`,
      blocks: [
        ...(lacks.length > 0 ? [{ is: 'list', items: lacks, short: true } as const] : []),
        {
          is: 'table',
          head: ['line', 'cost', 'margin', `price, ${workshop.currency}`],
          rows: [
            ...lines.map((line) => [
              line.label,
              money(line.costCoins),
              share(marginIn(part, line)),
              money(line.priceCoins),
            ]),
            [...total, money(netCoins)],
          ],
          right: [1, 2, 3],
        },
        paragraph(
          `${writeNumber(hours, 2, workshop)} hours charged${named === '' ? '' : ` (${named})`}; price with tax ${atLeast(money(grossCoins), part)}${reserveNote}.`,
        ),
        heading('What its client reads to mind'),
        quoteCautions(quoteModel(body)),
      ],
    },
    csv: quoteCsv(sums, workshop, { inside: true, part }),
  });
};

function insideData({ body: { sums, workshop }, part }: PrintedQuote): Record<string, unknown> {
  const { lines, costCoins, netCoins, grossCoins, hours, people } = sums;
  const money = (coins: number) => coinsText(coins, workshop.coinDecimals);
  return {
    lines: lines.map((line) => ({
      group: line.group,
      label: line.label,
      cost: money(line.costCoins),
      margin: marginIn(part, line) ?? null,
      reserve: money(line.reserveCoins),
      price: money(line.priceCoins),
    })),
    cost: money(costCoins),
    net: money(netCoins),
    gross: money(grossCoins),
    reserves: money(reservesOf(sums)),
    hours,
    ...(people && { people }),
    ...partData(part),
  };
}

function reservesOf({ lines }: Pick<QuoteSums, 'lines'>): number {
  return lines.reduce((sum, { reserveCoins }) => sum + reserveCoins, 0);
}
