import { putPrice } from '#shared-calc/acts/price-acts.ts';
import { sayActFault } from '#shared-calc/words/say-act-fault.ts';
import type { BookContext } from '#renderer/books/book-hands.ts';
import { oldPriceFlag, type BookColumn, type BookRow, type BookTable } from '#renderer/books/book-table.ts';
import { choiceField, plainOptions } from '#renderer/books/choice-field.ts';
import { columnsOf, type Field, type Lifted } from '#renderer/books/field.ts';
import { figureField } from '#renderer/books/figure-field.ts';
import { entryOfCoins, showCoins } from '#renderer/books/money-field.ts';
import { nextCode } from '#renderer/books/next-code.ts';
import { isOldPrice, packId, packsOf, priceOn, pricesOf } from '#shared-calc/buy/pack-prices.ts';
import { addRecords, removeRecords } from '#renderer/books/put-record.ts';
import { byCode, codeColumn, recordsOf } from '#renderer/books/record-table.ts';
import { supplierField } from '#renderer/books/supplier-field.ts';
import { mayGo } from '#renderer/books/uses-of.ts';
import { wordsField } from '#renderer/books/words-field.ts';
import { yesNoField } from '#renderer/books/yes-no-field.ts';
import { readMoney } from '#shared-calc/papers/read-money.ts';
import { isMeasured, tankMeasures, tankMisfit, type TankMeasure } from '#shared-calc/papers/tank-measures.ts';
import { shownUnit } from '#shared-calc/quantity/shown-unit.ts';
import { tankShapes } from '#shared-calc/fields/tank.ts';
import type { Pack, PackPrice, Records, Tank } from '#shared-calc/records/records.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { added } from '#shared-calc/records/change.ts';

/** A tank with what one costs today. */
export interface TankRow extends BookRow {
  readonly tank: Tank;
  /** The pack of one; not in the book yet where nobody has set a price. */
  readonly pack: Pack;
  readonly price: PackPrice | undefined;
}

export const tankTable: BookTable<TankRow> = {
  label: 'Tank book, one tank a row',
  one: 'tank',
  rows: (context) =>
    recordsOf(context.records, 'tank')
      .toSorted(byCode)
      .map((tank) => rowOf(tank, context)),
  columns: tankColumns,
  nameOf: ({ id, tank }) => `${id} ${tank.label}`.trim(),
  add: (context) => {
    const id = freeCode(context);
    const tank: Tank = {
      id,
      label: '',
      shape: 'rectangle',
      frontBowMm: 0,
      sideReturnMm: 0,
      frontVentMm: 0,
      clientsOwn: false,
      note: '',
    };
    return { id, change: addRecords(`new tank ${id}`, [added('tank', tank)]) };
  },
  copy: (context, row) => {
    const id = freeCode(context);
    return { id, change: addRecords(`${id}, a copy of ${row.id}`, [added('tank', { ...row.tank, id })]) };
  },
  remove: ({ records }, rows) => removeTanks(records, rows),
};

function rowOf(tank: Tank, { records, today }: BookContext): TankRow {
  const pack = packsOf(records, tank.id)[0] ?? { id: packId(tank.id, 1), material: tank.id, amount: 1 };
  return { id: tank.id, tank, pack, price: priceOn(records, pack.id, today) };
}

/** Tanks and materials share the price book, so that their codes do not meet. */
function freeCode({ records }: BookContext): string {
  return nextCode('T', [...records.tank.keys(), ...records.material.keys()]);
}

function removeTanks(records: Records, rows: readonly TankRow[]): ReturnType<NonNullable<typeof tankTable.remove>> {
  const may = mayGo(
    'tank',
    rows.map(({ id }) => id),
    records,
  );
  if (!may.ok) return may;
  const gone = rows.flatMap(({ id, tank }) => {
    const packs = packsOf(records, id);
    const prices = packs.flatMap((pack) => pricesOf(records, pack.id));
    return [
      ...prices.map((price) => added('packPrice', price)),
      ...packs.map((pack) => added('pack', pack)),
      added('tank', tank),
    ];
  });
  return ok(removeRecords(`${rows.map(({ id }) => id).join(', ')} removed`, gone));
}

function tankColumns(context: BookContext): readonly BookColumn<TankRow>[] {
  const { records } = context;
  const lifted: Lifted<'tank', TankRow> = {
    kind: 'tank',
    recordOf: ({ tank }) => tank,
    nameOf: ({ id }) => id,
    misfit: tankMisfit,
  };
  const fields: readonly Field<Tank>[] = [
    wordsField<Tank>('label', { title: 'Name', width: 14.5 }),
    shapeField,
    ...tankMeasures.map((measure) => measured(measure, context)),
  ];
  const last: readonly Field<Tank>[] = [
    supplierField<Tank>(records),
    yesNoField<Tank>('clientsOwn', "Client's own", 5),
    wordsField<Tank>('note', { title: 'Note', width: 18 }),
  ];
  const [supplier, ...others] = columnsOf(lifted, last);
  const middle = supplier ? [supplier, priceColumn(context), fromColumn] : [priceColumn(context), fromColumn];
  return [codeColumn(3.5), ...columnsOf(lifted, fields), ...middle, ...others];
}

const shapeField: Field<Tank> = choiceField<Tank>({
  key: 'shape',
  title: 'Shape',
  options: plainOptions(tankShapes),
  width: 6,
  get: ({ shape }) => shape,
  put: (tank, word) => withShape(tank, tankShapes.find((shape) => shape === word) ?? tank.shape),
});

/** Another shape keeps the measurements it has too; what it has not stands at nothing. */
function withShape(tank: Tank, shape: Tank['shape']): Tank {
  return {
    ...tank,
    shape,
    insideDepthMm: isMeasured(shape, 'insideDepthMm') ? tank.insideDepthMm : tank.insideLengthMm,
    frontBowMm: isMeasured(shape, 'frontBowMm') ? tank.frontBowMm : 0,
    sideReturnMm: isMeasured(shape, 'sideReturnMm') ? tank.sideReturnMm : 0,
  };
}

const titles: Readonly<Partial<Record<TankMeasure['key'], string>>> = {
  insideLengthMm: 'Length',
  insideDepthMm: 'Depth',
  insideHeightMm: 'Height',
  frontBowMm: 'Bow',
  sideReturnMm: 'Return',
  damHeightMm: 'Dam',
  frontVentMm: 'Vent',
  baseGlassMm: 'Base',
};

/** A measurement as it is shown in this workshop; one that the shape has not is not written in. */
function measured({ key, ...measure }: TankMeasure, { display }: BookContext): Field<Tank> {
  const field = figureField<Tank>(
    key,
    { ...measure, shown: shownUnit('mm', display), title: titles[key] ?? measure.name, width: 4.25 },
    display,
  );
  return {
    ...field,
    show: (tank) => (isMeasured(tank.shape, key) ? field.show(tank) : ''),
    entry: (tank) => (isMeasured(tank.shape, key) ? field.entry(tank) : ''),
    read: (text, tank) => {
      if (!isMeasured(tank.shape, key)) return failed(notMeasured(tank.shape, measure.name));
      const read = field.read(text, tank);
      return read.ok && key === 'insideLengthMm' ? ok(asDeepAsLong(read.value)) : read;
    },
  };
}

function asDeepAsLong(tank: Tank): Tank {
  return isMeasured(tank.shape, 'insideDepthMm') ? tank : { ...tank, insideDepthMm: tank.insideLengthMm };
}

function notMeasured(shape: Tank['shape'], name: string): string {
  return name === 'Inside depth'
    ? `A ${shape} is as deep as it is long; write its length.`
    : `A ${shape} has no ${name.toLowerCase()}.`;
}

/** What one costs today; another price holds from today on. */
function priceColumn(context: BookContext): BookColumn<TankRow> {
  const { workshop, today } = context;
  return {
    key: 'price',
    title: 'Price',
    unit: workshop.currency,
    look: 'figure',
    width: 8,
    show: ({ price }) => showCoins(price?.priceCoins, workshop),
    entry: ({ price }) => entryOfCoins(price?.priceCoins, workshop),
    flag: ({ price }) => (price && isOldPrice(price, context) ? oldPriceFlag : undefined),
    write: ({ pack: { material, amount } }, text) => {
      if (text.trim() === '') return failed('A price is not emptied; take it out of the prices at the right.');
      const coins = readMoney(text, workshop);
      if (!coins.ok) return failed(`Price: ${coins.fault}`);
      const done = putPrice.run(context, { material, amount, priceCoins: coins.value, from: today });
      return done.ok ? done : failed(sayActFault(done.fault));
    },
  };
}

const fromColumn: BookColumn<TankRow> = {
  key: 'from',
  title: 'Price from',
  unit: '',
  look: 'words',
  width: 6.5,
  show: ({ price }) => price?.from ?? '',
  entry: ({ price }) => price?.from ?? '',
  closed: 'A new price holds from today; set one from another day in the prices at the right.',
};
