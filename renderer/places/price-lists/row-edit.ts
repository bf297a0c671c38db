import type { BookContext } from '#renderer/books/book-api.ts';
import type { PlacedRow } from '#shared-calc/acts/place-list-rows.ts';
import { rowAsTyped, type RowChoice } from '#shared-calc/acts/row-choice.ts';
import type { NamedGoods } from '#shared-calc/acts/suggest-goods.ts';
import { packsOf } from '#shared-calc/buy/pack-prices.ts';
import { packWords } from '#shared-calc/quantity/goods-words.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { didYouMean } from '#shared-calc/rule/did-you-mean.ts';
import { sayListRowFault } from '#shared-calc/words/say-list-fault.ts';
import type { ShownRow } from './list-rows.ts';

/** What can be done with a row, as it is written under *Act*. */
export const rowActs = ['price', 'new pack', 'new material', 'leave out'] as const;

type Edit = (row: ShownRow, text: string, context: BookContext) => Result<RowChoice, string>;

/** What a text in a cell makes of the choices of its row, by column; empty takes back what was typed. */
export const editOf: Readonly<Partial<Record<string, Edit>>> = {
  goods: (row, text) => {
    if (text === '') return ok(without(row.choice, 'material'));
    const goods = findGoods(text, row.goods);
    if (!goods) {
      const known = row.goods.flatMap(({ id, label }) => [id, label]);
      return failed(`Nothing is called ${text} in the books of materials, tanks and plants.${didYouMean(text, known)}`);
    }
    return ok({ ...without(row.choice, 'act'), material: goods.id });
  },
  act: (row, text, context) => {
    const act = rowActs.find((each) => each === text.toLowerCase());
    if (text === '') return ok(without(row.choice, 'act'));
    if (act === undefined) return failed(`Write one of these: ${rowActs.join(', ')}.`);
    if (act === 'leave out') return ok({ ...row.choice, act: 'leave' });
    if (act === 'new material') {
      if (row.row.label.trim() === '') return failed('It has no words in the list to name a new material by.');
      return ok({ ...without(row.choice, 'material'), act });
    }
    const wrong = row.placed?.material === undefined ? undefined : packFault(act, row.placed, context);
    return wrong === undefined ? ok(without(row.choice, 'act')) : failed(wrong);
  },
  pack: typed('pack'),
  price: typed('price'),
  from: typed('from'),
};

/** A cell of the list that is typed over. */
function typed(key: 'pack' | 'price' | 'from'): Edit {
  return ({ row, choice }, text, { workshop }) => {
    if (text === '') return ok(without(choice, key));
    const over = rowAsTyped(row, { [key]: text }, workshop);
    const read = { pack: over.pack, price: over.priceCoins, from: over.from }[key];
    return read.ok ? ok({ ...choice, [key]: text }) : failed(sayListRowFault(read.fault));
  };
}

function packFault(
  act: 'price' | 'new pack',
  { material = '', known, amount, unit }: PlacedRow,
  { records, display }: BookContext,
): string | undefined {
  const pack = packWords(amount, unit, display);
  if (act === 'new pack' && known) return `${material} has a pack of ${pack} already: this is its price.`;
  if (act === 'price' && !known) {
    const own = packsOf(records, material).map((each) => packWords(each.amount, unit, display));
    const has = own.length === 0 ? 'has none yet' : `has ${own.join(', ')}`;
    return `A pack of ${pack} would be new; ${material} ${has}. Write under Pack which one it is.`;
  }
  return undefined;
}

/** By code, by name, or by both. */
function findGoods(text: string, goods: readonly NamedGoods[]): NamedGoods | undefined {
  const asked = text.toLowerCase();
  const [code = ''] = asked.split(' ');
  return (
    goods.find(({ id, label }) => [id, label, goodsName({ id, label })].some((each) => each.toLowerCase() === asked)) ??
    goods.find(({ id }) => id.toLowerCase() === code)
  );
}

export function goodsName({ id, label }: NamedGoods): string {
  return `${id} ${label}`.trim();
}

function without(choice: RowChoice | undefined, key: keyof RowChoice): RowChoice {
  const { [key]: _, ...rest } = choice ?? {};
  return rest;
}
