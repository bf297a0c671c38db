import type { PricedLine, QuoteSums } from './quote-sums.ts';

export type ChangedBy = 'client' | 'us' | 'supplier';

/** A quote worked out four times: each differs from the one before by what one party changed. */
export interface QuoteSteps {
  readonly old: QuoteSums;
  /** With the client's edits, at the old prices. */
  readonly client: QuoteSums;
  /** Then with ours: edits, margins, rates, house figures; still at the old prices. */
  readonly us: QuoteSums;
  /** Then with the suppliers' new prices: the new quote itself. */
  readonly supplier: QuoteSums;
}

export interface ChangedLine {
  readonly group: string;
  readonly label: string;
  /** Price before tax, in coins. */
  readonly from: number;
  readonly to: number;
  readonly by: ChangedBy;
}

export interface WhatChanged {
  readonly lines: readonly ChangedLine[];
  /** Difference of the price before tax, in coins. */
  readonly net: { readonly client: number; readonly supplier: number; readonly us: number };
  readonly sum: number;
}

const order = ['client', 'us', 'supplier'] as const;

/** What changed between two quotes and by whom; the lines, and the three shares, add up to the whole difference. */
export function whatChanged(steps: QuoteSteps): WhatChanged {
  const before = { client: steps.old, us: steps.client, supplier: steps.us };
  const net = {
    client: steps.client.netCoins - steps.old.netCoins,
    supplier: steps.supplier.netCoins - steps.us.netCoins,
    us: steps.us.netCoins - steps.client.netCoins,
  };
  const lines = order.flatMap((by) => changedLines(before[by], steps[by], by));
  return { lines, net, sum: net.client + net.us + net.supplier };
}

/** Lines that differ between two workings, in the order of the later one; a removed line goes to 0. */
function changedLines(from: QuoteSums, to: QuoteSums, by: ChangedBy): readonly ChangedLine[] {
  const was = byName(from.lines);
  const is = byName(to.lines);
  return [...new Map([...is, ...was])].flatMap(([name, { group, label }]) => {
    const line = { group, label, from: was.get(name)?.priceCoins ?? 0, to: is.get(name)?.priceCoins ?? 0, by };
    return line.from === line.to ? [] : [line];
  });
}

/** Lines by group and label; one-off lines of the same name are added up. */
function byName(lines: readonly PricedLine[]): ReadonlyMap<string, Pick<PricedLine, 'group' | 'label' | 'priceCoins'>> {
  const found = new Map<string, Pick<PricedLine, 'group' | 'label' | 'priceCoins'>>();
  for (const { group, label, priceCoins } of lines) {
    const name = JSON.stringify([group, label]);
    found.set(name, { group, label, priceCoins: priceCoins + (found.get(name)?.priceCoins ?? 0) });
  }
  return found;
}
