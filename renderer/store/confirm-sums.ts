import type { Output } from '#shared-calc/contract/channels.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { money } from './foot-boxes.ts';
import type { WorkedBench } from './worked-bench.ts';

type Confirmed = Output<'bench.confirm'>['columns'];

/** Columns where page and service do not come to the same price, told in one sentence; `undefined` where all agree. */
export function differingSums(worked: WorkedBench, confirmed: Confirmed, display: Display): string | undefined {
  const wrong = confirmed.flatMap(({ column, sums }) => {
    const known = worked.source().columns.some((each) => each.key === column);
    const ours = known ? worked.sums(column) : undefined;
    const page = ours?.ok ? ours.value.quote.grossCoins : undefined;
    if (page === sums?.grossCoins) return [];
    return [`${column}: ${said(page, display)} here, ${said(sums?.grossCoins, display)} from what is stored`];
  });
  if (wrong.length === 0) return undefined;
  return `This page and the book do not come to the same price. ${wrong.join('; ')}. Open the book again before you issue a quote.`;
}

function said(coins: number | undefined, display: Display): string {
  return coins === undefined ? 'no price' : `${money(coins, display)} ${display.currency}`;
}
