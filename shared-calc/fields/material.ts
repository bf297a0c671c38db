import { findUnit, unitSymbols } from '#shared-calc/quantity/unit.ts';
import {
  choice,
  code,
  count,
  day,
  figure,
  money,
  orEmpty,
  reference,
  season,
  unitChoice,
  within,
  words,
  yesNo,
} from './field.ts';
import { sourceFields } from './source.ts';
import { typedFields } from './typed.ts';

/**
 * `packs`: whole packs; `cut`: cut to the size asked for, priced by the unit, never in packs; `own`: from the back room
 * or the van, never in a shopping run.
 */
export const saleWays = ['packs', 'cut', 'own'] as const;

/** The units of goods: no money, and no readings such as degC. */
const goodsUnits = unitSymbols.filter((symbol) => findUnit(symbol)?.zero === undefined && symbol !== 'money');

export const material = {
  id: code('Code', { list: 'material' }),
  label: words('Material', { list: 'label', needed: true }),
  unit: unitChoice('Unit', goodsUnits, { list: 'unit', help: 'the unit it is needed and sold in', fresh: 'L' }),
  supplier: orEmpty(reference('Supplier', ['supplier'], { list: 'supplier' })),
  sale: choice('Sold', saleWays, {
    list: 'sale',
    labels: { packs: 'in packs', cut: 'cut to size', own: 'our own' },
  }),
  keeps: yesNo('Keeps', { list: 'keeps', help: 'left-overs keep for the next job', fresh: true }),
  leadDays: orEmpty(
    within(
      count('Lead, working days', {
        called: 'Lead',
        list: 'lead',
        low: 0,
        high: 365,
        help: "where it differs from the supplier's",
      }),
      (any) => any.min(0),
    ),
  ),
  note: words('Note', { list: 'note' }),
  ...sourceFields,
  season: orEmpty(
    season('Season', {
      list: 'season',
      help: 'when it is to be had fresh, as 10-01 to 03-31; empty: all year',
      empty: 'all year',
    }),
  ),
  least: orEmpty(
    figure('Least in the store', 'number', {
      called: 'Least',
      low: 0,
      help: "in the material's unit; below it a run over jobs buys for the store",
    }),
  ),
  upTo: orEmpty(figure('Fill up to', 'number', { low: 0, help: "in the material's unit; empty: to the least" })),
  ...typedFields,
};

export const pack = {
  id: code(),
  material: reference('Material', ['material', 'tank', 'plant']),
  amount: figure('Pack', "the material's", { list: 'packs', low: 1e-6 }),
  /** Left out: whoever the material is usually bought from. */
  supplier: orEmpty(reference('Sold by', ['supplier'], { empty: 'the usual supplier' })),
  article: orEmpty(words('Article number', { longest: 60 })),
  ...typedFields,
};

export const packPrice = {
  id: code(),
  pack: reference('Pack', ['pack']),
  from: day('From', { list: 'from', past: true }),
  priceCoins: money('Price', { list: 'price' }),
  /** Not asked of a supplier: nothing is quoted to a client with it. Left out: no guess. */
  guess: orEmpty(yesNo('A guess', { help: 'to be asked of the supplier before a quote is issued' })),
};
