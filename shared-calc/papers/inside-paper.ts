import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { heading, paragraph } from './document.ts';
import { titleOf, type MakePaper } from './paper-input.ts';
import { quoteCsv } from './quote-csv.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import { sayPeople } from '#shared-calc/price/say-people.ts';
import { ok } from '#shared-calc/result.ts';
import { quoteModel } from './quote-model.ts';
import { quoteBody, quoteCautions } from './quote-paper.ts';

/** For the builder alone: cost, margin and price of each line, the reserves and the hours. */
export const insidePaper: MakePaper = (input) => {
  const body = quoteBody(input);
  if (!body.ok) return body;
  const { sums, workshop } = body.value;
  const { lines, costCoins, netCoins, grossCoins, hours, people } = sums;
  const named = sayPeople(sums, workshop);
  const money = (coins: number) => coinsText(coins, workshop.coinDecimals);
  const share = (part: number) => `${writeNumber(part * 100, 1, workshop)} %`;
  const reserves = lines.reduce((sum, { reserveCoins }) => sum + reserveCoins, 0);
  const total = ['Before tax', money(costCoins), netCoins > 0 ? share((netCoins - costCoins) / netCoins) : ''];
  const reserveNote = reserves > 0 ? `; reserves of ${money(reserves)} are in the prices` : '';
  return ok({
    data: {
      lines: lines.map((line) => ({
        group: line.group,
        label: line.label,
        cost: money(line.costCoins),
        margin: line.margin,
        reserve: money(line.reserveCoins),
        price: money(line.priceCoins),
      })),
      cost: money(costCoins),
      net: money(netCoins),
      gross: money(grossCoins),
      reserves: money(reserves),
      hours,
      ...(people && { people }),
    },
    document: {
      title: `For us alone, ${titleOf(input)}`,
      blocks: [
        {
          is: 'table',
          head: ['line', 'cost', 'margin', `price, ${workshop.currency}`],
          rows: [
            ...lines.map((line) => [line.label, money(line.costCoins), share(line.margin), money(line.priceCoins)]),
            [...total, money(netCoins)],
          ],
          right: [1, 2, 3],
        },
        paragraph(
          `${writeNumber(hours, 2, workshop)} hours charged${named === '' ? '' : ` (${named})`}; price with tax ${money(grossCoins)}${reserveNote}.`,
        ),
        heading('What its client reads to mind'),
        quoteCautions(quoteModel(body.value)),
      ],
    },
    csv: quoteCsv(sums, workshop, { inside: true }),
  });
};
