import { writeDay, type DateOrder } from '#shared-calc/calendar/write-day.ts';
import { readFileSync } from 'node:fs';
import { findRecord } from '#shared-calc/acts/find-record.ts';
import { placeRows, type PlacedList, type PlacedRow } from '#shared-calc/acts/place-list-rows.ts';
import { readPriceList } from '#shared-calc/acts/price-list.ts';
import { learnedMap, takenRow, takePriceList } from '#shared-calc/acts/take-price-list.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { PriceListMap } from '#shared-calc/fields/price-list-map.ts';
import { listedPrices, priceListCsv, priceListJson } from '#shared-calc/papers/price-list-csv.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { encodingOf } from '#shared-calc/read/text-encoding.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { sayListFault, sayListRowFault } from '#shared-calc/words/say-list-fault.ts';
import { inputIssues } from '#shared-calc/acts/input-issues.ts';
import type { Book } from '#electron/book/book.ts';
import type { Command } from '#electron/cli/command.ts';
import { refusedAct } from '#electron/cli/job-acts.ts';
import type { Outcome } from '#electron/cli/outcome.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';
import { writeAct } from '#electron/cli/write-act.ts';
import { today } from '#electron/service/today.ts';

/** Takes a supplier's price list in; rows that cannot be read are left, and stop no other. */
const importCommand: Command = {
  name: 'prices import',
  usage:
    'prices import FILE --supplier S-hollin [--map FILE.json] [--try]: takes a supplier’s own price list in; - for FILE reads standard input',
  options: { ...bookOption, supplier: 'text', map: 'text', try: 'flag' },
  misuse: (given) => {
    const [file, more] = given.words;
    if (more !== undefined) return `What is ${more} for?`;
    if (file === undefined) return 'Name one file: prices import spring.csv --supplier S-hollin';
    return given.text('supplier') === undefined ? 'Say whose list it is: --supplier S-hollin' : undefined;
  },
  run: (given) =>
    withBook(given, (book) => {
      const text = readList(given.words[0] ?? '');
      if (!text.ok) return refusedList(text.fault);
      const map = readMap(given.text('map'));
      if (!map.ok) return refusedList(map.fault);
      return takeList(book, {
        text: text.value,
        map: map.value,
        supplier: given.text('supplier') ?? '',
        onlyTry: given.flag('try'),
      });
    }),
};

/** The present list, in a form that the program reads back. */
const exportCommand: Command = {
  name: 'prices export',
  usage: 'prices export [--supplier S-hollin]: today’s prices and announced ones as CSV, as prices import reads them',
  options: { ...bookOption, supplier: 'text' },
  misuse: ({ words: [word] }) => (word === undefined ? undefined : `What is ${word} for?`),
  run: (given) =>
    withBook(given, (book) => {
      const records = book.records();
      const supplier = given.text('supplier');
      const found = supplier === undefined ? undefined : findRecord(records, 'supplier', supplier);
      if (found && !found.ok) return refusedAct(found.fault);
      const prices = listedPrices(records, today(), supplier);
      return {
        is: 'answer',
        json: priceListJson(prices, workshopOf(records)),
        table: () => priceListCsv(prices, records).trimEnd(),
      };
    }),
};

export const priceListCommands: readonly Command[] = [importCommand, exportCommand];

interface ListFileFault {
  readonly kind: string;
  readonly says: string;
}

function refusedList(fault: ListFileFault): Outcome {
  return { is: 'refused', says: [fault.says], json: { fault } };
}

function readList(file: string): Result<string, ListFileFault> {
  const bytes = readBytes(file);
  if (!bytes) return failed({ kind: 'no-file', says: `Cannot read ${file}.` });
  const encoding = encodingOf(bytes);
  if (!encoding.ok) return failed({ kind: encoding.fault.kind, says: sayListFault(encoding.fault) });
  return ok(new TextDecoder(encoding.value).decode(bytes));
}

function readBytes(file: string): Uint8Array | undefined {
  try {
    return readFileSync(file === '-' ? 0 : file);
  } catch {
    return undefined;
  }
}

function readMap(file: string | undefined): Result<PriceListMap | undefined, ListFileFault> {
  if (file === undefined) return ok(undefined);
  const bytes = readBytes(file);
  if (!bytes) return failed({ kind: 'no-file', says: `Cannot read ${file}.` });
  const raw = parseJson(new TextDecoder().decode(bytes));
  if (!raw.ok) return failed({ kind: 'bad-map', says: `${file} is no JSON: ${raw.fault}.` });
  const map = PriceListMap.safeParse(raw.value);
  if (map.success) return ok(map.data);
  const issues = inputIssues(map.error, raw.value).map(({ field, says }) => `${field || 'the map'} ${says}`);
  return failed({ kind: 'bad-map', says: `${file}: ${issues.join('; ')}.` });
}

function parseJson(text: string): Result<unknown, string> {
  try {
    const value: unknown = JSON.parse(text);
    return ok(value);
  } catch (error) {
    return failed(error instanceof Error ? error.message : 'it cannot be read');
  }
}

interface AskedList {
  readonly text: string;
  readonly map: PriceListMap | undefined;
  readonly supplier: string;
  readonly onlyTry: boolean;
}

function takeList(book: Book, { text, map, supplier, onlyTry }: AskedList): Outcome {
  const records = book.records();
  const seller = findRecord(records, 'supplier', supplier);
  if (!seller.ok) return refusedAct(seller.fault);
  const workshop = workshopOf(records);
  const remembered = seller.value.priceList;
  const list = readPriceList(text, { map, remembered, workshop });
  if (!list.ok) return refusedList({ kind: list.fault.kind, says: sayListFault(list.fault) });
  const placed = placeRows(list.value, { records, supplier, map, remembered });
  if (!onlyTry) {
    const rows = placed.taken.map(takenRow);
    const derived = derive(records, today());
    const input = { supplier, rows, map: learnedMap(map, placed.taken) };
    const written = writeAct(book, derived, { act: takePriceList, input });
    if (!written.ok) return written.fault;
  }
  return {
    is: 'answer',
    json: listJson(placed, workshop.coinDecimals),
    table: () => listTable(placed, { onlyTry, decimals: workshop.coinDecimals, dateOrder: workshop.dateOrder }),
  };
}

function listJson({ taken, left }: PlacedList, decimals: number) {
  return {
    taken: taken.map(({ row, material, pack, priceCoins, from, known }) => ({
      row,
      material,
      pack,
      price: coinsText(priceCoins, decimals),
      from,
      ...(!known && { new: 'pack' }),
    })),
    left: left.map(({ row, fault }) => ({ row, why: sayListRowFault(fault) })),
  };
}

interface TableOptions {
  readonly onlyTry: boolean;
  readonly decimals: number;
  readonly dateOrder: DateOrder | undefined;
}

function listTable({ taken, left }: PlacedList, { onlyTry, decimals, dateOrder }: TableOptions): string {
  const rows = taken.map(({ row, material = '', pack, from, beforeCoins, priceCoins, ...placed }) => [
    String(row),
    material,
    `${pack.amount} ${pack.unit}`,
    writeDay(from, dateOrder),
    beforeCoins === undefined ? '' : coinsText(beforeCoins, decimals),
    coinsText(priceCoins, decimals),
    newsOf(placed),
  ]);
  const head = ['row', 'material', 'pack', 'from', 'before', 'price', ''];
  const why = left.map(({ row, fault }) => [String(row), sayListRowFault(fault)]);
  return [
    ...(rows.length > 0 ? [textTable(head, rows, [0, 4, 5]), ''] : []),
    ...(why.length > 0 ? [textTable(['left', 'why'], why, [0]), ''] : []),
    sayTaken({ taken, left }, onlyTry),
  ].join('\n');
}

function newsOf({ known, isThere }: Pick<PlacedRow, 'known' | 'isThere'>): string {
  if (!known) return 'new pack';
  return isThere ? 'in the book' : '';
}

function sayTaken({ taken, left }: PlacedList, onlyTry: boolean): string {
  const news = taken.filter(({ isThere }) => !isThere).length;
  const prices = `${news} ${news === 1 ? 'price' : 'prices'}`;
  const done = onlyTry ? `Tried only: ${prices} could be taken in` : `${prices} taken in`;
  const there = taken.length === news ? '' : `, ${taken.length - news} in the book already`;
  return `${done}${there}${left.length === 0 ? '' : `, ${left.length} left`}.`;
}
