import { writeDay } from '#shared-calc/calendar/write-day.ts';
import type { Act } from '#shared-calc/acts/act.ts';
import { closeOrder, newOrder, placeOrders } from '#shared-calc/acts/order-acts.ts';
import { receiveOrder } from '#shared-calc/acts/receive-acts.ts';
import { isLineIn, isOpenOrder, orderStanding, type OrderStanding } from '#shared-calc/buy/order-standing.ts';
import { goodsLabel, unitInStore } from '#shared-calc/buy/unit-of-goods.ts';
import { againstChange, allAgainst } from '#shared-calc/derive/against-change.ts';
import { derive, type Derived } from '#shared-calc/derive/derived.ts';
import { placementOf, type Placement } from '#shared-calc/derive/placement.ts';
import { orderCsv } from '#shared-calc/papers/order-csv.ts';
import { jobsOf, sayLine, supplierOrder } from '#shared-calc/papers/supplier-orders.ts';
import { orderedCautions } from '#shared-calc/prepare/ordered-cautions.ts';
import { sayDays } from '#shared-calc/prepare/say-day.ts';
import { cleanNoise, writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { leftOutOf, sayLeftOut } from '#shared-calc/words/say-left-out.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';
import type { Book } from '#electron/book/book.ts';
import { cautionJson, underFigures } from '#electron/cli/cautions-answer.ts';
import type { Command } from '#electron/cli/command.ts';
import { moneyOf, noSupplierJson, orderJson } from '#electron/cli/order-json.ts';
import { readPacks, readReceipt } from '#electron/cli/order-words.ts';
import { refusal, type Outcome } from '#electron/cli/outcome.ts';
import { readDay } from '#electron/cli/read-day.ts';
import type { Arguments, OptionTable } from '#electron/cli/read-arguments.ts';
import { reasonOf, reasonOptions } from '#electron/cli/reason-options.ts';
import { sayAgainst } from '#electron/cli/say-against.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';
import { wordsMisuse } from '#electron/cli/words-misuse.ts';
import { writeAct } from '#electron/cli/write-act.ts';
import { today } from '#electron/service/today.ts';

const onOption = { ...bookOption, on: 'text' } as const satisfies OptionTable;
const noted = { ...onOption, note: 'text', ...reasonOptions } as const satisfies OptionTable;

const placeCommand: Command = {
  name: 'order place',
  usage:
    'order place --jobs J02,J03 [--suppliers S-hollin] [--note T] [--anyway REASON --who R-builder] [--on DATE]: an order to each supplier',
  options: { ...noted, jobs: 'text', suppliers: 'text' },
  misuse: (given) => (given.text('jobs') === undefined ? 'Say for which jobs: --jobs J02,J03.' : noWords(given)),
  run: (given) =>
    onDay(given, (book, derived) => {
      const jobs = listed(given, 'jobs') ?? [];
      const suppliers = listed(given, 'suppliers');
      const placement = placementOf(derived, jobs);
      if (!placement.ok) return refusal(sayJobFault(placement.fault));
      const input = { jobs, suppliers, note: given.text('note'), ...reasonOf(given) };
      const written = writeAct(book, derived, { act: placeOrders, input });
      return written.ok
        ? placed(book, { change: written.value, derived, placement: placement.value, suppliers })
        : written.fault;
    }),
};

interface Placed {
  readonly change: Change;
  readonly derived: Derived;
  readonly placement: Placement;
  readonly suppliers: readonly string[] | undefined;
}

function placed(book: Book, { change, derived, placement, suppliers }: Placed): Outcome {
  const after = derive(book.records(), derived.today);
  const money = moneyOf(after.workshop.coinDecimals);
  const orders = change.added.flatMap((each) => (each.kind === 'order' ? [each.record.id] : []));
  const standing = orders.flatMap((id) => standingOf(after, id) ?? []);
  const kept = change.added.flatMap((each) => (each.kind === 'move' ? [each.record] : []));
  const against = allAgainst(againstChange(derived, change));
  const left = leftOutOf(placement, suppliers);
  return {
    is: 'answer',
    json: {
      orders: standing.map((each) => orderJson(each, after.records, money)),
      kept: kept.map(({ job, of, lot, amount }) => {
        const [label, unit] = [goodsLabel(of, after.records), unitInStore(of, after.records)];
        return { job, of, label, lot, amount: cleanNoise(amount), unit };
      }),
      noSupplier: noSupplierJson(placement.noSupplier, money),
      outOfSeason: placement.outOfSeason.map(({ material, label, unit, short, season: { from, to }, until }) => {
        return { material, label, short, unit, from, to, until };
      }),
      leftOut: left.drafts.map(({ supplier, goodsCoins }) => ({ supplier: supplier.id, goods: money(goodsCoins) })),
      ...(against.length > 0 && { against }),
      ...minded(after, standing),
    },
    table: () => (standing.length === 0 ? 'Nothing to order.' : listTable(standing, after)),
    notices: [...sayLeftOut(left, after), ...sayAgainst(against)],
  };
}

const listCommand: Command = {
  name: 'order list',
  usage: 'order list [--open] [--on DATE]: the orders with their state',
  options: { ...onOption, open: 'flag' },
  misuse: noWords,
  run: (given) =>
    onDay(given, (_book, derived) => {
      const all = [...derived.records.order.values()]
        .map((order) => orderStanding(derived.records, order, derived.today))
        .filter((each) => !given.flag('open') || isOpenOrder(each));
      const money = moneyOf(derived.workshop.coinDecimals);
      return {
        is: 'answer',
        json: all.map((each) => orderJson(each, derived.records, money)),
        table: () => (all.length === 0 ? 'No orders.' : listTable(all, derived)),
      };
    }),
};

const showCommand: Command = {
  name: 'order show',
  usage: 'order show O-0001 [--csv] [--on DATE]: an order with what came of it',
  options: { ...onOption, csv: 'flag', bom: 'flag' },
  misuse: (given) => wordsMisuse(given, ['order, as O-0001']),
  run: (given) => onDay(given, (_book, derived) => shown(derived, given.words[0] ?? '')),
};

const inCommand: Command = {
  name: 'order in',
  usage:
    'order in O-0001 [--lines 1=1@32.00,3=6] [--until DATE] [--best DATE] [--note T] [--on DATE]: takes in what came; a note takes in more than was to come',
  options: { ...noted, lines: 'text', until: 'text', best: 'text' },
  misuse: (given) => wordsMisuse(given, ['order, as O-0001']),
  run: (given) =>
    onDay(given, (book, derived) => {
      const receipt = readReceipt(given, derived.workshop.coinDecimals);
      if (!receipt.ok) return refusal(receipt.fault);
      const input = { order: given.words[0], ...receipt.value, note: given.text('note'), ...reasonOf(given) };
      return writtenAndShown(book, derived, { act: receiveOrder, input });
    }),
};

const closeCommand: Command = {
  name: 'order close',
  usage: 'order close O-0001 [--on DATE]: the rest is not coming, and is needed again',
  options: onOption,
  misuse: (given) => wordsMisuse(given, ['order, as O-0001']),
  run: (given) =>
    onDay(given, (book, derived) =>
      writtenAndShown(book, derived, { act: closeOrder, input: { order: given.words[0] } }),
    ),
};

const newCommand: Command = {
  name: 'order new',
  usage: 'order new S-hollin M01-10x1,M04-6x2 [--note T] [--on DATE]: an order for the store, by packs',
  options: { ...onOption, note: 'text' },
  misuse: (given) => wordsMisuse(given, ['supplier, as S-hollin', 'packs, as M01-10x1,M04-6x2']),
  run: (given) =>
    onDay(given, (book, derived) => {
      const [supplier, text = ''] = given.words;
      const packs = readPacks(text);
      if (!packs.ok) return refusal(packs.fault);
      return writtenAndShown(book, derived, {
        act: newOrder,
        input: { supplier, packs: packs.value, note: given.text('note') },
      });
    }),
};

export const orderCommands: readonly Command[] = [
  placeCommand,
  listCommand,
  showCommand,
  inCommand,
  closeCommand,
  newCommand,
];

function noWords({ words: [word] }: Arguments): string | undefined {
  return word === undefined ? undefined : `What is ${word} for?`;
}

function listed(given: Arguments, name: string): readonly string[] | undefined {
  return given
    .text(name)
    ?.split(',')
    .map((each) => each.trim());
}

/** Runs with the book as it is on the day asked. */
function onDay(given: Arguments, run: (book: Book, derived: Derived) => Outcome): Promise<Outcome> {
  return withBook(given, (book) => {
    const on = readDay(given, 'on');
    return on.ok ? run(book, derive(book.records(), on.value ?? today())) : refusal(on.fault);
  });
}

interface Asked<I> {
  readonly act: Act<I>;
  readonly input: Readonly<Record<string, unknown>>;
}

function writtenAndShown<I>(book: Book, derived: Derived, asked: Asked<I>): Outcome {
  const written = writeAct(book, derived, asked);
  if (!written.ok) return written.fault;
  const change = written.value;
  const touched = [
    ...change.added.map(({ kind, record }) => ({ kind, record })),
    ...change.updated.map(({ kind, to }) => ({ kind, record: to })),
  ];
  const order = touched.find(({ kind }) => kind === 'order')?.record.id ?? String(asked.input['order']);
  const against = allAgainst(againstChange(derived, change));
  const answer = shown(derive(book.records(), derived.today), order);
  return answer.is === 'answer' ? { ...answer, notices: sayAgainst(against) } : answer;
}

function standingOf({ records, today: on }: Derived, id: string): OrderStanding | undefined {
  const order = records.order.get(id);
  return order && orderStanding(records, order, on);
}

function shown(derived: Derived, id: string): Outcome {
  const { records, workshop } = derived;
  const standing = standingOf(derived, id);
  if (!standing) return refusal(`No order ${id} in the book.`);
  return {
    is: 'answer',
    json: { ...orderJson(standing, records, moneyOf(workshop.coinDecimals)), ...minded(derived, [standing]) },
    table: () =>
      [
        orderTable(standing, derived),
        ...underFigures([], orderedCautions(records, [standing.order]), derived.display),
      ].join('\n'),
    csv: () => orderCsv(supplierOrder(standing.order, records), workshop),
  };
}

function minded({ records }: Derived, standing: readonly OrderStanding[]) {
  const cautions = orderedCautions(
    records,
    standing.map(({ order }) => order),
  );
  return { warnings: [], cautions: cautions.map(cautionJson) };
}

function listTable(all: readonly OrderStanding[], { records, workshop, display: { dateOrder } }: Derived): string {
  const money = moneyOf(workshop.coinDecimals);
  const rows = all.map(({ order, state, lines, goodsCoins, due, lateDays }) => [
    order.id,
    records.supplier.get(order.supplier)?.name ?? order.supplier,
    jobsOf(order.lines).join(', ') || 'store',
    writeDay(order.on, dateOrder),
    writeDay(due, dateOrder),
    `${lines.filter(isLineIn).length} of ${lines.length}`,
    money(goodsCoins),
    lateDays > 0 ? `${state}, ${sayDays(lateDays)} late` : state,
  ]);
  return textTable(['order', 'supplier', 'for', 'on', 'due', 'lines in', 'goods', 'state'], rows, [6]);
}

function orderTable(standing: OrderStanding, derived: Derived): string {
  const { display, workshop } = derived;
  const money = moneyOf(workshop.coinDecimals);
  const count = (figure: number) => writeNumber(figure, Number.isInteger(figure) ? 0 : 2, display);
  const rows = standing.lines.map(({ line, came, open, paidCoins }) => [
    String(line.n),
    line.label,
    sayLine(line, workshop),
    money(line.askedCoins),
    writeDay(line.due, display.dateOrder),
    line.for.map(({ job }) => job).join(', ') || 'store',
    count(came),
    count(open),
    money(paidCoins),
  ]);
  const head = ['', 'goods', 'packs', 'asked', 'due', 'for', 'in', 'to come', 'paid'];
  return [listTable([standing], derived), '', textTable(head, rows, [0, 3, 6, 7, 8])].join('\n');
}
