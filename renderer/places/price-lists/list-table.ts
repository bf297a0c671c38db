import type { BookContext } from '#renderer/books/book-api.ts';
import type { BookColumn, BookFlag, BookTable } from '#renderer/books/book-table.ts';
import type { PlacedRow } from '#shared-calc/acts/place-list-rows.ts';
import { writeDay } from '#shared-calc/calendar/write-day.ts';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import { packWords } from '#shared-calc/quantity/goods-words.ts';
import { plainOptions } from '#shared-calc/read/read-choice.ts';
import { emptyChange } from '#shared-calc/records/change.ts';
import { ok } from '#shared-calc/result.ts';
import { sayListRowFault } from '#shared-calc/words/say-list-fault.ts';
import { goodsOf, type ShownRow } from './list-rows.ts';
import { editOf, goodsName, rowActs } from './row-edit.ts';
import { changeOf, sayChange } from './say-list.ts';

type Column = BookColumn<ShownRow>;

/** The rows of a list as a grid. Its fields accept a text or say why not; the book stays as it is until the import. */
export function listTable(rows: (context: BookContext) => readonly ShownRow[]): BookTable<ShownRow> {
  return {
    label: 'Rows of the list',
    one: 'row',
    view: 'price-list',
    rows,
    columns: (context) => [
      articleColumn,
      closedColumn({ key: 'label', title: 'Its words', width: 10, show: ({ row }) => row.label, closed: ITS_OWN }),
      goodsColumn(context),
      actColumn(context),
      packColumn(context),
      priceColumn(context),
      changeColumn,
      beforeColumn(context),
      fromColumn(context),
      whyColumn,
    ],
    nameOf: ({ id, row }) => `${id} ${row.article} ${row.label}`,
  };
}

const ITS_OWN = 'This is what the list says.';

const articleColumn: Column = closedColumn({
  key: 'article',
  title: 'Article',
  width: 5.5,
  show: ({ row }) => row.article || row.material || `row ${row.row}`,
  closed: ITS_OWN,
});

interface ClosedParts extends Pick<Column, 'key' | 'title' | 'width' | 'show'> {
  readonly closed: string;
}

function closedColumn(parts: ClosedParts): Column {
  return { ...parts, unit: '', look: 'words', entry: parts.show };
}

/** Accepts a text as `editOf` does; what it makes of the row is kept by the place. */
function written(key: string, context: BookContext): Pick<Column, 'write'> {
  return {
    write: (row, text) => {
      const edited = editOf[key]?.(row, text.trim(), context);
      return edited && !edited.ok ? edited : ok(emptyChange(''));
    },
  };
}

const suggestedFlag: BookFlag = { sign: 'need', look: 'needs', says: 'is it' };
const unknownFlag: BookFlag = { sign: 'need', look: 'needs', says: 'not known yet' };

function goodsColumn(context: BookContext): Column {
  const names = new Map(goodsOf(context).map((each) => [each.id, goodsName(each)]));
  const nameOf = ({ placed, choice }: ShownRow) => {
    const material = placed?.material ?? choice?.material ?? '';
    return names.get(material) ?? material;
  };
  return {
    key: 'goods',
    title: 'Is our',
    unit: '',
    look: 'words',
    width: 13,
    show: (row) => {
      if (row.choice?.act === 'new material') return 'new';
      return nameOf(row) || (row.suggested && row.choice?.act !== 'leave' ? `${goodsName(row.suggested)}?` : '');
    },
    entry: nameOf,
    options: goodsOf(context).map(({ id, label }) => ({ value: id, label })),
    coded: true,
    flag: (row) => {
      if (row.placed || row.choice?.act || nameOf(row) !== '') return undefined;
      return row.suggested ? suggestedFlag : unknownFlag;
    },
    ...written('goods', context),
  };
}

function actColumn(context: BookContext): Column {
  const show = ({ placed, choice }: ShownRow) =>
    placed ? sayAct(placed) : choice?.act === 'leave' ? 'leave out' : 'left';
  return {
    key: 'act',
    title: 'Act',
    unit: '',
    look: 'words',
    width: 6.5,
    show,
    entry: (row) => (row.placed || row.choice?.act === 'leave' ? show(row) : ''),
    options: plainOptions(rowActs),
    ...written('act', context),
  };
}

function sayAct({ known, material, isThere }: PlacedRow): string {
  if (material === undefined) return 'new material';
  if (!known) return 'new pack';
  return isThere ? 'in the book' : 'price';
}

function packColumn(context: BookContext): Column {
  const show = ({ row, placed, choice }: ShownRow) =>
    choice?.pack ?? (placed ? packWords(placed.pack.amount, placed.pack.unit, context.display) : row.written.pack);
  return {
    key: 'pack',
    title: 'Pack',
    unit: '',
    look: 'figure',
    width: 5,
    show,
    entry: ({ row, choice }) => choice?.pack ?? row.written.pack,
    rank: ({ placed }) => placed?.amount,
    ...written('pack', context),
  };
}

function beforeColumn({ workshop }: BookContext): Column {
  const show = ({ placed }: ShownRow) => showCoins(placed?.beforeCoins, workshop);
  const closed = 'What the book has until then.';
  const rank = ({ placed }: ShownRow) => placed?.beforeCoins;
  return { key: 'before', title: 'Before', unit: '', look: 'figure', width: 5.5, show, entry: show, closed, rank };
}

function priceColumn(context: BookContext): Column {
  const { workshop } = context;
  return {
    key: 'price',
    title: 'Price',
    unit: workshop.currency,
    look: 'figure',
    width: 5.5,
    show: ({ row, placed }) => (placed ? showCoins(placed.priceCoins, workshop) : row.written.price),
    entry: ({ row, choice }) => choice?.price ?? row.written.price,
    rank: ({ placed }) => placed?.priceCoins,
    ...written('price', context),
  };
}

const farFlag: BookFlag = { sign: 'watch', look: 'watch', says: 'far from before' };
/** Per cent: a price that is so much more, or as much less, is looked at twice. */
const FAR = 50;

const changeColumn: Column = {
  ...closedColumn({
    key: 'change',
    title: 'Change',
    width: 5.5,
    show: ({ placed }) => sayChange(placed),
    closed: 'Worked from both prices.',
  }),
  look: 'figure',
  rank: ({ placed }) => changeOf(placed),
  flag: ({ placed }) => (Math.abs(changeOf(placed) ?? 0) >= FAR ? farFlag : undefined),
};

function fromColumn(context: BookContext): Column {
  const { today, display } = context;
  return {
    key: 'from',
    title: 'From',
    unit: '',
    look: 'words',
    width: 6.5,
    show: ({ row, placed }) => (placed ? writeDay(placed.from, display.dateOrder) : row.written.from),
    entry: ({ row, choice }) => choice?.from ?? row.written.from,
    rank: ({ placed }) => placed?.from,
    flag: ({ placed }) =>
      placed && placed.from > today ? { sign: 'watch', look: 'watch', says: 'from a later day' } : undefined,
    ...written('from', context),
  };
}

const whyColumn: Column = closedColumn({
  key: 'why',
  title: 'Why it is left',
  width: 26,
  show: ({ left }) => (left ? sayListRowFault(left) : ''),
  closed: 'It goes when the row is put right.',
});
