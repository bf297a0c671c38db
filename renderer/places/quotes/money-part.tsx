import { isPart } from '#shared-calc/papers/quote-part.ts';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import { moneyBarsSpec } from '#renderer/curves/money-bars-spec.ts';
import { MoneyBars } from '#renderer/curves/money-bars.tsx';
import { InsideTable, type InsideParts } from './inside-table.tsx';

/** Only for the builder: the cost of a quote line by line, and where its money goes. */
export function MoneyPart({ body, part, context }: InsideParts) {
  const { workshop } = context;
  const bars = isPart(part)
    ? undefined
    : moneyBarsSpec(body.sums, { ...workshop, money: (coins) => showCoins(coins, workshop) });
  return (
    <>
      <InsideTable body={body} part={part} context={context} />
      {bars && <MoneyBars spec={bars} />}
    </>
  );
}
