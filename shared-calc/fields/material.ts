import { z } from 'zod';

import { choice, code, count, day, figure, money, orEmpty, reference, textAs, within, words, yesNo } from './field.ts';

/** `packs`: whole packs; `cut`: cut to the size asked, priced by the unit, never in packs; `own`: from the back room or the van, never in a shopping run. */
export const saleWays = ['packs', 'cut', 'own'] as const;

export const material = {
  id: code('Code', { list: 'material' }),
  label: words('Material', { list: 'label' }),
  unit: textAs('Unit', z.string(), { list: 'unit', help: 'the unit it is needed and sold in' }),
  supplier: orEmpty(reference('Supplier', ['supplier'], { list: 'supplier' })),
  sale: choice('Sold', saleWays, { list: 'sale' }),
  keeps: yesNo('Keeps', { list: 'keeps', help: 'left-overs keep for the next job' }),
  leadDays: orEmpty(
    within(
      count('Lead, working days', { list: 'lead', low: 0, high: 365, help: "where it differs from the supplier's" }),
      (any) => any.min(0),
    ),
  ),
  note: words('Note', { list: 'note' }),
};

export const pack = {
  id: code(),
  material: reference('Material', ['material', 'tank']),
  amount: figure('Pack', "the material's", { list: 'packs' }),
};

export const packPrice = {
  id: code(),
  pack: reference('Pack', ['pack']),
  from: day('Price from'),
  priceCoins: money('Price'),
};
