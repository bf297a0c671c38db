import type { Act } from '#shared-calc/acts/act.ts';
import { keepStock } from '#shared-calc/acts/keep-acts.ts';
import { countStock, putIn, sellStock, setLeast, useStock, wasteStock } from '#shared-calc/acts/store-acts.ts';
import { readCoins } from '#shared-calc/buy/coins.ts';
import { unitInStore } from '#shared-calc/buy/unit-of-goods.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { derive, type Derived } from '#shared-calc/derive/derived.ts';
import { goodsOf, storeGoods, storeValue, type StoredGoods, type StoredLot } from '#shared-calc/derive/store-goods.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { goodsWords } from '#shared-calc/quantity/goods-words.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';
import type { Book } from '#electron/book/book.ts';
import { amountsJson } from '#electron/cli/amounts-json.ts';
import type { Command } from '#electron/cli/command.ts';
import { refusal, type Outcome } from '#electron/cli/outcome.ts';
import { readDay } from '#electron/cli/read-day.ts';
import type { Arguments, OptionTable } from '#electron/cli/read-arguments.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';
import { wordsMisuse } from '#electron/cli/words-misuse.ts';
import { writeAct } from '#electron/cli/write-act.ts';
import { today } from '#electron/service/today.ts';

const onOption = { ...bookOption, on: 'text' } as const satisfies OptionTable;

const listCommand: Command = {
  name: 'store',
  usage: 'store [M01] [--on DATE] [--use DATE]: what there is of goods on a day, for use on another',
  options: { ...onOption, use: 'text' },
  misuse: ({ words: [, more] }) => (more === undefined ? undefined : `What is ${more} for?`),
  run: (given) =>
    withBook(given, (book) => {
      const days = readDays(given);
      if (!days.ok) return refusal(days.fault);
      return answer(derive(book.records(), days.value.on), given.words[0], days.value.use);
    }),
};

function readDays(given: Arguments): Result<{ readonly on: Day; readonly use: Day }, string> {
  const [on, use] = [readDay(given, 'on'), readDay(given, 'use')];
  if (!on.ok) return on;
  if (!use.ok) return use;
  const asked = on.value ?? today();
  if (use.value !== undefined && use.value < asked)
    return failed(`--use ${use.value} lies before the day asked, ${asked}.`);
  return ok({ on: asked, use: use.value ?? asked });
}

interface StoreAct<I> {
  readonly name: string;
  readonly usage: string;
  readonly options: OptionTable;
  readonly act: Act<I>;
  /** The act's input beside the goods, the amount and the day. */
  readonly more?: (given: Arguments, read: Readings) => Result<Readonly<Record<string, unknown>>, string>;
}

interface Readings {
  readonly coins: (name: string) => Result<number | undefined, string>;
  readonly day: (name: string) => Result<Day | undefined, string>;
}

function amountCommand<I>({ name, usage, options, act, more }: StoreAct<I>): Command {
  return {
    name,
    usage,
    options: { ...onOption, ...options },
    misuse: (given) => wordsMisuse(given, ['goods, as M01', 'amount, as "12.5 L"']),
    run: (given) =>
      withBook(given, (book) => {
        const on = readDay(given, 'on');
        if (!on.ok) return refusal(on.fault);
        const derived = derive(book.records(), on.value ?? today());
        const [goods = '', text = ''] = given.words;
        const amount = readAmount(derived, goods, text);
        if (!amount.ok) return refusal(amount.fault);
        const rest = more?.(given, readingsOf(given, derived)) ?? ok({});
        if (!rest.ok) return refusal(rest.fault);
        const input = { of: goods, amount: amount.value, on: derived.today, ...rest.value };
        const says = { note: given.text('note'), job: given.text('job') };
        return answered(book, derived, {
          written: writeAct(book, derived, { act, input: { ...input, ...says } }),
          goods,
        });
      }),
  };
}

const inCommand = amountCommand({
  name: 'store in',
  usage:
    'store in M01 "13 L" [--paid 9.80] [--best DATE] [--until DATE] [--job J02] [--note T] [--on DATE]: puts goods in',
  options: { paid: 'text', best: 'text', until: 'text', job: 'text', note: 'text' },
  act: putIn,
  more: (_given, { coins, day }) => {
    const [paid, best, until] = [coins('paid'), day('best'), day('until')];
    if (!paid.ok) return paid;
    if (!best.ok) return best;
    return until.ok ? ok({ coins: paid.value, bestBefore: best.value, until: until.value }) : until;
  },
});

const useCommand = amountCommand({
  name: 'store use',
  usage: 'store use M01 "2 L" [--job J02] [--note T] [--on DATE]: takes goods out, what is kept for the job first',
  options: { job: 'text', note: 'text' },
  act: useStock,
});

const wasteCommand = amountCommand({
  name: 'store waste',
  usage: 'store waste M01 "2 L" [--job J02] [--note T] [--on DATE]: writes goods off; the note says why',
  options: { job: 'text', note: 'text' },
  act: wasteStock,
});

const sellCommand = amountCommand({
  name: 'store sell',
  usage: 'store sell M01 "2 L" [--got 5.00] [--note T] [--on DATE]: sells goods',
  options: { got: 'text', note: 'text' },
  act: sellStock,
  more: (_given, { coins }) => {
    const got = coins('got');
    return got.ok ? ok({ coins: got.value }) : got;
  },
});

const countCommand = amountCommand({
  name: 'store count',
  usage: 'store count M01 "12.5 L" [--note T] [--on DATE]: writes down what was counted; the note says why it differs',
  options: { note: 'text' },
  act: countStock,
});

const keepCommand = amountCommand({
  name: 'store keep',
  usage: 'store keep M01 "7 L" --job J02 [--on DATE]: keeps goods for a job; "-7 L" gives back',
  options: { job: 'text' },
  act: keepStock,
});

const leastCommand: Command = {
  name: 'store least',
  usage:
    'store least M01 "20 L" ["60 L"] [--on DATE]: the least that should lie there, and up to what it is filled; none: no level',
  options: onOption,
  misuse: (given) => wordsMisuse(given, ['material, as M01', 'least, as "20 L"'], 1),
  run: (given) =>
    withBook(given, (book) => {
      const on = readDay(given, 'on');
      if (!on.ok) return refusal(on.fault);
      const derived = derive(book.records(), on.value ?? today());
      const [material = '', low = '', high] = given.words;
      const least = low === 'none' ? ok(null) : readAmount(derived, material, low);
      if (!least.ok) return refusal(least.fault);
      const upTo = high === undefined ? ok(undefined) : readAmount(derived, material, high);
      if (!upTo.ok) return refusal(upTo.fault);
      const input = { material, least: least.value, upTo: upTo.value };
      return answered(book, derived, { written: writeAct(book, derived, { act: setLeast, input }), goods: material });
    }),
};

export const storeCommands: readonly Command[] = [
  listCommand,
  inCommand,
  useCommand,
  wasteCommand,
  sellCommand,
  countCommand,
  keepCommand,
  leastCommand,
];

interface WrittenOf {
  readonly written: Result<unknown, Outcome>;
  readonly goods: string;
}

/** The goods after an act on them. */
function answered(book: Book, { today: on }: Derived, { written, goods }: WrittenOf): Outcome {
  return written.ok ? answer(derive(book.records(), on), goods) : written.fault;
}

/** An amount in the unit of its goods; goods that nobody knows are the act's to refuse. */
function readAmount({ records, display }: Derived, goods: string, text: string): Result<number, string> {
  const stored = unitInStore(goods, records) ?? 'each';
  const read = said(readMeasure(text, { name: 'Amount', stored, shown: stored }, display));
  return read.ok ? ok(read.value ?? 0) : read;
}

function readingsOf(given: Arguments, { workshop }: Derived): Readings {
  return {
    day: (name) => readDay(given, name),
    coins: (name) => {
      const text = given.text(name);
      if (text === undefined) return ok(undefined);
      const coins = readCoins(text, workshop.coinDecimals);
      return coins === undefined || coins < 0 ? failed(`--${name} ${text}: that is no sum of money.`) : ok(coins);
    },
  };
}

function answer(derived: Derived, goods?: string, use: Day = derived.today): Outcome {
  if (goods !== undefined && unitInStore(goods, derived.records) === undefined)
    return refusal(`No goods called ${goods} in the books.`);
  const rows = goods === undefined ? storeGoods(derived, use) : [goodsOf(derived, goods, use)];
  const value = storeValue(derived);
  return {
    is: 'answer',
    json: {
      goods: rows.map((row) => goodsJson(row, derived)),
      ...(goods === undefined && {
        value: coinsText(value.coins, derived.workshop.coinDecimals),
        valueNotKnown: value.notKnown,
      }),
    },
    table: () => storeTable(rows, derived),
  };
}

function goodsJson(row: StoredGoods, derived: Derived): Record<string, unknown> {
  const { now, of, unit, label, least, upTo } = row;
  return {
    of,
    label,
    unit,
    onHand: cleanNoise(now.onHand),
    free: cleanNoise(now.free),
    quarantined: cleanNoise(now.quarantined),
    kept: amountsJson(now.kept),
    onOrder: cleanNoise(now.onOrder),
    coming: cleanNoise(now.comingFree + [...now.coming.values()].reduce((sum, each) => sum + each, 0)),
    least: least ?? null,
    upTo: upTo ?? null,
    lots: row.lots.map((lot) => lotJson(lot, derived)),
  };
}

function lotJson({ stock: { lot, amount, usable, kept, loose, opened }, eachCoins }: StoredLot, derived: Derived) {
  const { on, until, bestBefore, coins, order, note } = lot.came;
  const { coinDecimals } = derived.workshop;
  return {
    lot: lot.id,
    of: lot.of,
    in: on,
    amount: cleanNoise(amount),
    free: cleanNoise(usable ? loose : 0),
    kept: amountsJson(kept),
    usable,
    sealed: !opened,
    until: until ?? null,
    bestBefore: bestBefore ?? null,
    order: order ?? null,
    paid: coins === undefined ? null : coinsText(coins, coinDecimals),
    each: eachCoins === undefined ? null : (eachCoins / 10 ** coinDecimals).toFixed(coinDecimals + 2),
    note,
  };
}

function storeTable(rows: readonly StoredGoods[], { display }: Derived): string {
  if (rows.length === 0) return 'The store is empty.';
  const body = rows.map(({ of, label, unit, now, least }) => {
    const amount = (value: number) => (value > 1e-9 ? goodsWords(value, unit, display) : '');
    const kept = [...now.kept].map(([job, each]) => `${job}: ${amount(each)}`).join(', ');
    return [
      of,
      label,
      amount(now.onHand) || '0',
      amount(now.free) || '0',
      kept,
      amount(now.quarantined),
      amount(now.onOrder),
      least === undefined ? '' : amount(least),
    ];
  });
  const head = ['', 'goods', 'on hand', 'free', 'kept for', 'in quarantine', 'on order', 'least'];
  return textTable(head, body, [2, 3, 5, 6, 7]);
}
