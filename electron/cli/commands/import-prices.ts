import { takeInList } from '#shared-calc/acts/import-acts.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { sayActFault } from '#shared-calc/words/say-act-fault.ts';
import { today } from '#electron/service/today.ts';
import { readText } from '#electron/cli/read-text.ts';
import { sayEditFault } from '#electron/book/say-book-fault.ts';
import type { Book } from '#electron/book/book.ts';
import type { Command } from '#electron/cli/command.ts';
import { refusal, wrongUse, type Outcome } from '#electron/cli/outcome.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import type { ListImport } from '#shared-calc/acts/import-list.ts';
import { importPrices, type TakenPrice } from '#shared-calc/acts/import-prices.ts';
import { sayRowFault } from '#shared-calc/words/say-row-fault.ts';
import { isEmptyChange } from '#shared-calc/records/change.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';

/** Imports a price list; with `--try`, only shows what it would do. One refused row stops the whole import. */
export const importPricesCommand: Command = {
  name: 'book import-prices',
  usage: 'book import-prices FILE.csv [--try]: takes in a price list of material, pack, unit, price, from',
  options: { ...bookOption, try: 'flag' },
  run: (given) => {
    const [file, ...more] = given.words;
    if (file === undefined || more.length > 0) return wrongUse('Name one file: book import-prices prices.csv');
    return withBook(given, (book) => takeIn(book, file, given.flag('try')));
  },
};

function takeIn(book: Book, file: string, onlyTry: boolean): Outcome {
  const text = readText(file);
  if (text === undefined) return refusal(`Cannot read ${file}.`);
  const records = book.records();
  const list = importPrices(text, records);
  const coinDecimals = workshopOf(records).coinDecimals;
  const report = reportOf(list, onlyTry, coinDecimals);
  if (list.refused.length > 0) {
    const says = list.refused.map(({ row, fault }) => `${file}, row ${row}: ${sayRowFault(fault)}`);
    return { is: 'refused', says: [...says, 'Nothing was taken in.'], json: report };
  }
  if (!onlyTry && !isEmptyChange(list.change)) {
    const taken = takeInList.run(derive(records, today()), { list: 'prices', csv: text, file });
    if (!taken.ok) return refusal(sayActFault(taken.fault));
    const done = book.apply(taken.value, book.revision());
    if (!done.ok) return refusal(sayEditFault(done.fault));
  }
  return { is: 'answer', json: report, table: () => tableOf(list, onlyTry, coinDecimals) };
}

function reportOf(list: ListImport<TakenPrice>, onlyTry: boolean, decimals: number) {
  return {
    tried: onlyTry,
    taken: list.refused.length > 0 ? 0 : list.taken.length,
    prices: list.taken.map(({ priceCoins, beforeCoins, ...told }) => ({
      ...told,
      price: coinsText(priceCoins, decimals),
      before: beforeCoins === undefined ? null : coinsText(beforeCoins, decimals),
    })),
    refused: list.refused.map(({ row, fault }) => ({ row, says: sayRowFault(fault) })),
  };
}

function tableOf(list: ListImport<TakenPrice>, onlyTry: boolean, decimals: number): string {
  const rows = list.taken.map(({ material, pack, unit, from, priceCoins, beforeCoins }) => [
    material,
    `${pack} ${unit}`,
    from,
    beforeCoins === undefined ? '' : coinsText(beforeCoins, decimals),
    coinsText(priceCoins, decimals),
  ]);
  return `${textTable(['material', 'pack', 'from', 'before', 'price'], rows, [3, 4])}\n\n${sayDone(list, onlyTry)}`;
}

function sayDone({ taken, change }: ListImport<TakenPrice>, onlyTry: boolean): string {
  if (isEmptyChange(change)) return 'Nothing to do: the book has all of these prices already.';
  const prices = taken.length === 1 ? 'price' : 'prices';
  return onlyTry ? `Tried only: ${taken.length} ${prices} could be taken in.` : `${taken.length} ${prices} taken in.`;
}
