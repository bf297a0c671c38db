import { type Goods, priceBook, type PriceBook } from '#shared-calc/buy/price-book.ts';
import type { NeedAmount } from '#shared-calc/buy/needs.ts';
import type { Material, Pack, PackPrice, Records, Supplier, Tank } from '#shared-calc/records/records.ts';

/*
 * Goods of the demo workshop, entered by hand, for the tests of buying. Prices in coins.
 */

type PriceRecords = Pick<Records, 'material' | 'pack' | 'packPrice' | 'supplier' | 'tank' | 'plant'>;

const packsOf: Readonly<Record<string, readonly (readonly [number, number])[]>> = {
  M01: [
    [10, 980],
    [45, 3150],
  ],
  M03: [
    [1, 430],
    [5, 1900],
    [30, 9600],
  ],
  M04: [
    [6, 720],
    [38, 2900],
  ],
  M05: [
    [9, 460],
    [70, 2450],
  ],
  M06: [
    [10, 890],
    [50, 3400],
  ],
  M07: [
    [8, 1350],
    [40, 5400],
  ],
  M08: [
    [5, 740],
    [20, 2200],
  ],
  M09: [
    [12, 920],
    [40, 2600],
    [80, 4700],
  ],
  M15: [
    [100, 520],
    [500, 1900],
  ],
  M25b: [[1, 4650]],
  M26: [
    [100, 1200],
    [500, 4500],
  ],
  PG: [[1, 310]],
  SP: [[1, 600]],
  VAN: [[1, 45]],
  T05: [[1, 14_800]],
};

const materials: readonly Material[] = [
  media('M01', 'expanded clay 8-16 mm', 'L'),
  media('M03', 'barrier mesh', 'm'),
  media('M04', 'calcined clay', 'L'),
  media('M05', 'coir', 'L'),
  media('M06', 'fine bark', 'L'),
  media('M07', 'tree-fern fibre', 'L'),
  media('M08', 'charcoal', 'L'),
  media('M09', 'long-fibre moss', 'L'),
  { ...media('M15', 'small oak leaves', 'g'), supplier: 'saltbarrow' },
  { ...media('M25b', 'cut cover glass', 'm2'), supplier: 'greavel', sale: 'cut', keeps: false },
  { ...media('M26', 'inoculant', 'g'), keeps: false },
  { ...media('PG', 'ground plant', 'each'), supplier: 'marlvale', keeps: false },
  { ...ownGoods('SP', 'springtail seed', 'each') },
  { ...ownGoods('VAN', 'van', 'km') },
];

const suppliers: readonly Supplier[] = [
  {
    id: 'hollin',
    name: "Hollin Lane Growers' Supply",
    sells: 'media',
    leadDays: 3,
    carriageCoins: 750,
    freeFromCoins: 9000,
    note: '',
  },
  {
    id: 'saltbarrow',
    name: 'Saltbarrow Bark and Timber',
    sells: 'leaves',
    leadDays: 5,
    carriageCoins: 600,
    freeFromCoins: 6000,
    note: '',
  },
  { id: 'greavel', name: 'Greavel Pane Cutters', sells: 'tanks, glass', leadDays: 10, carriageCoins: 1200, note: '' },
  {
    id: 'marlvale',
    name: 'Marlvale Plant House',
    sells: 'plants',
    leadDays: 4,
    carriageCoins: 950,
    minimumCoins: 4000,
    note: '',
  },
];

const tank: Tank = { id: 'T05', label: 'T05', shape: 'rectangle', clientsOwn: false, supplier: 'greavel', note: '' };

const packs: readonly Pack[] = Object.entries(packsOf).flatMap(([material, sizes]) =>
  sizes.map(([amount]) => ({ id: `${material}-${amount}`, material, amount })),
);
const packPrices: readonly PackPrice[] = Object.entries(packsOf).flatMap(([material, sizes]) =>
  sizes.map(([amount, priceCoins]) => ({
    id: `${material}-${amount}-1`,
    pack: `${material}-${amount}`,
    from: '2027-07-01',
    priceCoins,
  })),
);

export const demoRecords: PriceRecords = {
  material: byId(materials),
  supplier: byId(suppliers),
  tank: byId([tank]),
  pack: byId(packs),
  packPrice: byId(packPrices),
  plant: new Map(),
};

export const demoPrices: PriceBook = priceBook(demoRecords, { on: '2027-07-15', oldPriceDays: 180 });

/** Goods of the demo book by id; an unknown id throws. */
export function demoGoods(material: string): Goods {
  const goods = demoPrices.goods.get(material);
  if (!goods) throw new Error(`no goods ${material}`);
  return goods;
}

export function withRecords(
  more: Partial<{ readonly [K in keyof PriceRecords]: readonly RecordIn<K>[] }>,
): PriceRecords {
  return {
    material: new Map([...demoRecords.material, ...byId(more.material ?? [])]),
    supplier: new Map([...demoRecords.supplier, ...byId(more.supplier ?? [])]),
    tank: new Map([...demoRecords.tank, ...byId(more.tank ?? [])]),
    plant: new Map([...demoRecords.plant, ...byId(more.plant ?? [])]),
    pack: new Map([...demoRecords.pack, ...byId(more.pack ?? [])]),
    packPrice: new Map([...demoRecords.packPrice, ...byId(more.packPrice ?? [])]),
  };
}

/** A need of one build in one column, with the material's own group and line. */
export function need(material: string, amount: number, more: Partial<NeedAmount> = {}): NeedAmount {
  return {
    line: `${material}_need`,
    material,
    group: 'media',
    amount,
    perJob: false,
    column: 'T07',
    count: 1,
    ...more,
  };
}

/** Needs of the three tanks of the shopping run, in litres and grams, by the house recipe with flat soil. */
export const threeTanks: readonly { readonly id: string; readonly needs: readonly NeedAmount[] }[] = [
  column('T03', { M01: 6.244, M04: 2.481, M05: 4.447, M06: 4.447, M07: 2.964, M08: 1.482, M09: 1.482, M15: 79.72 }),
  column('T07', { M01: 16.837, M04: 4.824, M05: 13.71, M06: 13.71, M07: 9.14, M08: 4.57, M09: 4.57, M15: 161.24 }),
  column('T08', { M01: 34.053, M04: 8.41, M05: 27.53, M06: 27.53, M07: 18.353, M08: 9.177, M09: 9.177, M15: 289.87 }),
];

type RecordIn<K extends keyof PriceRecords> = PriceRecords[K] extends ReadonlyMap<string, infer R> ? R : never;

function column(id: string, amounts: Readonly<Record<string, number>>): { id: string; needs: readonly NeedAmount[] } {
  return { id, needs: Object.entries(amounts).map(([material, amount]) => need(material, amount, { column: id })) };
}

function media(id: string, label: string, unit: string): Material {
  return { id, label, unit, supplier: 'hollin', sale: 'packs', keeps: true, note: '' };
}

function ownGoods(id: string, label: string, unit: string): Material {
  return { id, label, unit, sale: 'own', keeps: false, note: '' };
}

function byId<R extends { readonly id: string }>(records: readonly R[]): ReadonlyMap<string, R> {
  return new Map(records.map((record) => [record.id, record]));
}
