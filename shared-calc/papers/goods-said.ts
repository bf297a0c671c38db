import { showWithUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { unitWords } from '#shared-calc/quantity/unit-words.ts';
import { toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { cleanNoise, writeNumber } from '#shared-calc/quantity/write-figure.ts';

interface Written {
  readonly decimalComma?: boolean;
}

/** A unit of goods for a reader: `m²` for `m2`. */
export function saidUnit(unit: string): string {
  return unitWords(unit, '');
}

/** An amount of goods: `45 L`, `0.2495 m²` (areas with four decimals), `1 piece`, `12 pieces`. */
export function saidAmount(amount: number, unit: string, { decimalComma = false }: Written = {}): string {
  const figure = unit === 'm2' ? writeNumber(amount, 4, { group: false }) : String(cleanNoise(amount));
  const written = decimalComma ? figure.replace('.', ',') : figure;
  if (unit === 'each') return cleanNoise(amount) === 1 ? '1 piece' : `${written} pieces`;
  return `${written} ${saidUnit(unit)}`;
}

/** A count of packs: `2 × 45 L`, `3 × 12 pieces`; single things as `4 pieces`. */
export function saidPacks(count: number, { amount, unit }: PackContents, written: Written = {}): string {
  if (unit === 'each' && cleanNoise(amount) === 1) return saidAmount(count, unit, written);
  return `${count} × ${saidAmount(amount, unit, written)}`;
}

interface PackContents {
  readonly amount: number;
  readonly unit: string;
}

/** An amount of goods with the decimals of its unit: `16.84 L`, `3`. */
export function goodsAmount(amount: number, unit: string, display: Display): string {
  if (unit === 'each') return writeNumber(amount, Number.isInteger(cleanNoise(amount)) ? 0 : 2, display);
  return showWithUnit(toBase(amount, unitOf(unit)), unit, display);
}
