import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { changedQuote } from '#shared-calc/jobs/changed-quote.ts';
import type { WhatChanged } from '#shared-calc/price/what-changed.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';
import type { Command } from '#electron/cli/command.ts';
import { findIssued } from '#electron/cli/find-issued.ts';
import { refusal } from '#electron/cli/outcome.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';

/** What changed from one issued quote to another, and by whom. */
export const changedCommand: Command = {
  name: 'changed',
  usage: 'changed Q-0001A Q-0001B: what changed between two issued quotes, by the client, by us, by the suppliers',
  options: bookOption,
  misuse: (given) => (given.words.length === 2 ? undefined : 'Name two issued quotes: changed Q-0001A Q-0001B.'),
  run: (given) =>
    withBook(given, (book) => {
      const [from, to] = given.words.map((word) => findIssued(book.records(), word));
      if (!from?.ok || !to?.ok) return refusal(...[from, to].flatMap((each) => (each && !each.ok ? [each.fault] : [])));
      const changed = changedQuote(from.value, to.value);
      if (!changed.ok) return refusal(sayOrderFault(changed.fault));
      const money = (coins: number) => coinsText(coins, to.value.workshop.coinDecimals);
      return { is: 'answer', json: changedJson(changed.value, money), table: () => changedTable(changed.value, money) };
    }),
};

type Money = (coins: number) => string;

function changedJson({ lines, net, sum }: WhatChanged, money: Money): Record<string, unknown> {
  return {
    lines: lines.map(({ group, from, to, by }) => ({ group, from: money(from), to: money(to), by })),
    net: { client: money(net.client), supplier: money(net.supplier), us: money(net.us) },
    sum: money(sum),
  };
}

function changedTable({ lines, net, sum }: WhatChanged, money: Money): string {
  const rows = lines.map(({ label, from, to, by }) => [by, label, money(from), money(to), money(to - from)]);
  return [
    textTable(['by', 'line', 'from', 'to', 'difference'], rows, [2, 3, 4]),
    '',
    `before tax: client ${money(net.client)}, us ${money(net.us)}, suppliers ${money(net.supplier)}, in all ${money(sum)}`,
  ].join('\n');
}
