import { unitCalled } from '#shared-calc/quantity/unit-spellings.ts';
import { findUnit, unitSymbols } from '#shared-calc/quantity/unit.ts';

/**
 * Units as price lists write them beside what people type: the common codes of UN/ECE Recommendation 20, and
 * abbreviations of the trade (common practice, no source). `OZ` is one of mass: a list that means fluid ounces writes
 * them.
 */
const written: Readonly<Record<string, string>> = {
  c62: 'each',
  ea: 'each',
  pce: 'each',
  unit: 'each',
  units: 'each',
  u: 'each',
  st: 'each',
  stk: 'each',
  stck: 'each',
  stuck: 'each',
  lt: 'L',
  ltrs: 'L',
  mlt: 'mL',
  gll: 'gal',
  oza: 'fl_oz',
  floz: 'fl_oz',
  ftq: 'ft3',
  cuft: 'ft3',
  mtq: 'm3',
  cbm: 'm3',
  kgm: 'kg',
  grm: 'g',
  lbr: 'lb',
  onz: 'oz',
  mtr: 'm',
  cmt: 'cm',
  mmt: 'mm',
  inh: 'in',
  fot: 'ft',
  mtk: 'm2',
  ftk: 'ft2',
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
  const called = Object.hasOwn(written, tidy) ? written[tidy] : (symbols.get(tidy) ?? unitCalled(tidy));
  return called !== undefined && !noGoods.has(called) ? called : undefined;
}
