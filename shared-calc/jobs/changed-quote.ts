import { boxReader } from '#shared-calc/bench/box-reader.ts';
import { joinLines } from '#shared-calc/bench/column-lines.ts';
import type { OrderFault } from '#shared-calc/bench/order-sums.ts';
import type { Goods } from '#shared-calc/buy/price-book.ts';
import { whatChanged, type WhatChanged } from '#shared-calc/price/what-changed.ts';
import type { Line, QuoteLine } from '#shared-calc/records/records.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import type { SheetColumn, Written, WrittenByLine } from './job-sheet.ts';
import type { QuoteBody } from './quote-body.ts';
import { byId } from '#shared-calc/records/by-id.ts';
import { partsOf, reworkQuote, type QuoteParts } from './rework-quote.ts';

/**
 * What changed between two issued quotes, and by whom, from their frozen bodies alone: first the client's edits, worked
 * out in the old house at the old prices; then ours at the old prices; then the prices. A size, its count, and what a
 * client wrote or took back are the client's; the rest of the job and the house are ours.
 */
export function changedQuote(from: QuoteBody, to: QuoteBody): Result<WhatChanged, OrderFault> {
  const old = partsOf(from);
  const next = partsOf(to);
  const client = reworkQuote(clientsEdits(old, next));
  if (!client.ok) return client;
  const us = reworkQuote({ ...next, goods: atOldPrices(old.goods, next.goods), pricesOn: old.pricesOn });
  if (!us.ok) return us;
  return ok(whatChanged({ old: from.sums, client: client.value, us: us.value, supplier: to.sums }));
}

function clientsEdits(old: QuoteParts, next: QuoteParts): QuoteParts {
  const known = matcher(old.columns, next.columns);
  const written = (lines: readonly Line[], before: WrittenByLine, after: WrittenByLine) =>
    byClient(before, readIn(lines, before, after));
  const tanks = new Map(old.columns.map(({ tank }) => [tank.id, tank]));
  return {
    ...old,
    whole: written(joinLines(old.columns.map(({ lines = old.lines }) => lines)), old.whole, next.whole),
    columns: next.columns.map(({ lines: now, ...column }) => {
      const before = known(column);
      const lines = linesThen(old, column) ?? now;
      return {
        ...column,
        ...(lines && { lines }),
        // A tank measured again in the tank book meanwhile is our change; this step has its old measurements.
        tank: tanks.get(column.tank.id) ?? column.tank,
        locals: written(lines ?? old.lines, before?.locals ?? new Map(), column.locals),
      };
    }),
    oneOffs: [...byClient(byId(old.oneOffs), byId(next.oneOffs)).values()],
    // A group, tax class or material that the old quote does not have keeps its present value.
    margins: [...new Map([...byId(next.margins), ...byId(old.margins)]).values()],
    taxClasses: [...new Map([...byId(next.taxClasses), ...byId(old.taxClasses)]).values()],
    goods: new Map([...next.goods, ...old.goods]),
  };
}

/** The old lines of the recipe of a new column; none if they were the usual ones, or its recipe was not in the quote. */
function linesThen(
  { columns }: QuoteParts,
  { recipe, tank }: Pick<SheetColumn, 'recipe' | 'tank'>,
): readonly Line[] | undefined {
  const same = columns.filter((column) => column.recipe === recipe);
  return (same.find((column) => column.tank.id === tank.id) ?? same[0])?.lines;
}

/** What can be read in the old house: a rule over a line that we added since is applied in our step. */
function readIn(lines: readonly Line[], before: WrittenByLine, after: WrittenByLine): WrittenByLine {
  const reader = boxReader(lines);
  const reads = (name: string, text: string) => {
    const line = lines.find((each) => each.name === name);
    return line !== undefined && reader.read(line, text).is !== 'faulty';
  };
  const readable = new Map<string, Written>();
  for (const [name, written] of after) {
    const box = reads(name, written.text) ? written : before.get(name);
    if (box) readable.set(name, box);
  }
  return readable;
}

/** Finds the old column of a new one: by its record, or by its key if the quotes have no record in common. */
function matcher(
  old: readonly SheetColumn[],
  next: readonly SheetColumn[],
): (column: SheetColumn) => SheetColumn | undefined {
  const same = old.some(({ size }) => next.some((column) => column.size === size));
  return ({ size, key }) => old.find((column) => (same ? column.size === size : column.key === key));
}

/** The state after the client's writes and take-backs, before ours. */
function byClient<T extends Written | QuoteLine>(
  old: ReadonlyMap<string, T>,
  next: ReadonlyMap<string, T>,
): ReadonlyMap<string, T> {
  const after = new Map(old);
  for (const [name, { by }] of old) if (by === 'client' && !next.has(name)) after.delete(name);
  for (const [name, each] of next) if (each.by === 'client') after.set(name, each);
  return after;
}

/** Current goods at the packs and prices of the earlier quote; goods missing there use today's. */
function atOldPrices(old: ReadonlyMap<string, Goods>, next: ReadonlyMap<string, Goods>): ReadonlyMap<string, Goods> {
  return new Map(
    [...next].map(([material, goods]) => {
      const before = old.get(material);
      return [material, before?.unit === goods.unit ? { ...goods, packs: before.packs } : goods];
    }),
  );
}
