import { findUnit, unitSymbols } from '#shared-calc/quantity/unit.ts';

/**
 * Units as price lists write them: the common codes of UN/ECE Recommendation 20, and abbreviations of the trade (common
 * practice, no source). `OZ` is one of mass: a list that means fluid ounces writes them.
 */
const written: Readonly<Record<string, string>> = {
  c62: 'each',
  ea: 'each',
  each: 'each',
  pc: 'each',
  pce: 'each',
  pcs: 'each',
  piece: 'each',
  pieces: 'each',
  unit: 'each',
  units: 'each',
  u: 'each',
  st: 'each',
  stk: 'each',
  stck: 'each',
  stuck: 'each',
  ltr: 'L',
  ltrs: 'L',
  litre: 'L',
  litres: 'L',
  liter: 'L',
  liters: 'L',
  lt: 'L',
  mlt: 'mL',
  gll: 'gal',
  gals: 'gal',
  gallon: 'gal',
  gallons: 'gal',
  qts: 'qt',
  quart: 'qt',
  quarts: 'qt',
  oza: 'fl_oz',
  floz: 'fl_oz',
  ftq: 'ft3',
  cuft: 'ft3',
  mtq: 'm3',
  cbm: 'm3',
  kgm: 'kg',
  kgs: 'kg',
  kilo: 'kg',
  grm: 'g',
  gr: 'g',
  lbr: 'lb',
  lbs: 'lb',
  pound: 'lb',
  pounds: 'lb',
  onz: 'oz',
  ounce: 'oz',
  ounces: 'oz',
  mtr: 'm',
  metre: 'm',
  metres: 'm',
  meter: 'm',
  meters: 'm',
  cmt: 'cm',
  mmt: 'mm',
  inh: 'in',
  inch: 'in',
  inches: 'in',
  fot: 'ft',
  foot: 'ft',
  feet: 'ft',
  mtk: 'm2',
  sqm: 'm2',
  ftk: 'ft2',
  sqft: 'ft2',
};

/** No pack is sold by these. */
const noGoods = new Set(['money', '%', 'degC', 'degF', 'K', 'F_deg']);
const symbols = new Map(
  unitSymbols
    .filter((symbol) => !noGoods.has(symbol))
    .map((symbol) => [symbol.toLowerCase().replaceAll('_', ''), symbol]),
);

/** The unit that a word of a price list is, in any case, with accents or without: `LTR`, `Gal.`, `sq ft`, `m³`; `undefined` for others. */
export function unitOfList(word: string): string | undefined {
  const plain = word.trim();
  if (findUnit(plain) && !noGoods.has(plain) && unitSymbols.includes(plain)) return plain;
  const tidy = plain
    .toLowerCase()
    .normalize('NFKD')
    .replaceAll(/[\s._\p{M}]/gu, '');
  return Object.hasOwn(written, tidy) ? written[tidy] : symbols.get(tidy);
}
