import { riseChange, risenPrices, type PriceRise } from '#shared-calc/acts/price-rise.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { touchesNow, touchesOn, type PriceTouch } from '#shared-calc/derive/price-touch.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import { applyChange, isEmptyChange } from '#shared-calc/records/change.ts';
import type { Workshop } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { sayEntryFault } from '#shared-calc/words/say-entry-fault.ts';
import type { Book } from '#electron/book/book.ts';
import { sayEditFault } from '#electron/book/say-book-fault.ts';
import type { Command } from '#electron/cli/command.ts';
import { refusedAct } from '#electron/cli/job-acts.ts';
import { refusal, type Outcome } from '#electron/cli/outcome.ts';
import type { Arguments } from '#electron/cli/read-arguments.ts';
import { readDay } from '#electron/cli/read-day.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';
import { today } from '#electron/service/today.ts';

/** Raises the prices of a supplier; with `--try`, only says what it would do. */
const riseCommand: Command = {
  name: 'prices rise',
  usage:
    'prices rise S-hollin 12% [--from DATE] [--materials M01,M04] [--try]: raises a supplier’s prices, and says which open quotes that touches',
  options: { ...bookOption, from: 'text', materials: 'text', try: 'flag' },
  misuse: ({ words }) => {
    if (words.length > 2) return `What is ${words[2]} for?`;
    return words.length < 2 ? 'Say whose prices, and by how much: prices rise S-hollin 12%' : undefined;
  },
  run: (given) => withBook(given, (book) => rise(book, given)),
};

/** What prices and wages of a day touch. */
const touchedCommand: Command = {
  name: 'prices touched',
  usage:
    'prices touched [--on DATE]: the open quotes that prices and wages since their issue touch; announced ones too',
  options: { ...bookOption, on: 'text' },
  misuse: ({ words: [word] }) => (word === undefined ? undefined : `What is ${word} for?`),
  run: (given) =>
    withBook(given, (book) => {
      const on = readDay(given, 'on');
      if (!on.ok) return refusal(on.fault);
      const records = book.records();
      const { touches, prices } =
        on.value === undefined ? touchesNow(derive(records, today())) : touchedOn(book, on.value);
      const packs = prices.map(({ pack, beforeCoins, coins }) => ({ pack, from: beforeCoins, to: coins }));
      return answer({ packs, touches, head: '' }, workshopOf(records));
    }),
};

export const pricesCommands: readonly Command[] = [riseCommand, touchedCommand];

function touchedOn(book: Book, on: Day) {
  return touchesOn(derive(book.records(), on), on);
}

function rise(book: Book, given: Arguments): Outcome {
  const records = book.records();
  const now = derive(records, today());
  const asked = readRise(given, now.today);
  if (!asked.ok) return refusal(asked.fault);
  const risen = risenPrices(records, asked.value);
  if (!risen.ok) return refusedAct(risen.fault);
  const change = riseChange(records, risen.value, asked.value);
  const onlyTry = given.flag('try');
  if (!onlyTry && !isEmptyChange(change)) {
    const written = book.apply(change, book.revision());
    if (!written.ok) return refusal(sayEditFault(written.fault));
  }
  const after = derive(applyChange(records, change), now.today);
  return answer(
    {
      packs: risen.value.map(({ pack, before, coins }) => ({ pack: pack.id, from: before.priceCoins, to: coins })),
      touches: touchesOn(after, asked.value.from).touches,
      head: onlyTry ? 'Tried only: nothing is written.' : change.label,
    },
    workshopOf(records),
  );
}

function readRise(given: Arguments, on: Day): Result<PriceRise & { readonly from: Day }, string> {
  const [supplier = '', by = ''] = given.words;
  const share = readMeasure(by, { name: 'Rise', stored: 'share', shown: '%', low: -0.9, high: 10 });
  if (!share.ok) return failed(sayEntryFault(share.fault));
  const from = readDay(given, 'from');
  if (!from.ok) return from;
  const materials = given
    .text('materials')
    ?.split(',')
    .map((each) => each.trim());
  return ok({ supplier, share: share.value ?? 0, from: from.value ?? on, ...(materials && { materials }) });
}

interface Told {
  readonly packs: readonly { readonly pack: string; readonly from: number; readonly to: number }[];
  readonly touches: readonly PriceTouch[];
  readonly head: string;
}

function answer({ packs, touches, head }: Told, { coinDecimals, currency }: Workshop): Outcome {
  const money = (coins: number) => coinsText(coins, coinDecimals);
  const both = ({ from, to }: PriceTouch['cost']) => ({ from: money(from), to: money(to) });
  return {
    is: 'answer',
    json: {
      packs: packs.map(({ pack, ...prices }) => ({ pack, ...both(prices) })),
      touched: touches.map(({ job, quote, state, cost, net, margin }) => ({
        job,
        quote,
        state,
        cost: both(cost),
        net: both(net),
        margin: both(margin),
      })),
    },
    table: () =>
      [
        ...(head === '' ? [] : [head, '']),
        ...(packs.length === 0 ? [] : [packsTable(packs, money, currency), '']),
        touchedTable(touches, money),
      ].join('\n'),
  };
}

function packsTable(packs: Told['packs'], money: (coins: number) => string, currency: string): string {
  const rows = packs.map(({ pack, from, to }) => [pack, money(from), money(to)]);
  return textTable(['pack', `before, ${currency}`, 'price'], rows, [1, 2]);
}

function touchedTable(touches: readonly PriceTouch[], money: (coins: number) => string): string {
  if (touches.length === 0) return 'No open quote is touched.';
  const rows = touches.map(({ job, quote, state, cost, net, margin }) => [
    job,
    quote,
    state,
    money(cost.from),
    money(cost.to),
    money(margin.from),
    money(margin.to),
    money(net.to - net.from),
  ]);
  const head = ['job', 'quote', 'state', 'cost then', 'cost now', 'margin then', 'margin now', 'below our margin by'];
  return textTable(head, rows, [3, 4, 5, 6, 7]);
}
