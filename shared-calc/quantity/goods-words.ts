import { readUnits } from './figure-words.ts';
import { showWithUnit, type Display } from './shown-unit.ts';
import { toBase, unitOf } from './unit.ts';
import { cleanNoise, writeNumber } from './write-figure.ts';

/** An amount of goods in a builder's words: `16.84 L`, `3`, `0.25 m²`. */
export function goodsWords(amount: number, unit: string, display: Display): string {
  if (unit === 'each') return writeNumber(amount, Number.isInteger(cleanNoise(amount)) ? 0 : 2, display);
  return readUnits(showWithUnit(toBase(amount, unitOf(unit)), unit, display), display);
}

/** The content of one pack, in its unit of sale: `45 L`, `5 pieces`, `1 piece`. */
export function packWords(amount: number, unit: string, display: Display): string {
  const holds = cleanNoise(amount);
  const figure = display.decimalComma ? String(holds).replace('.', ',') : String(holds);
  if (unit === 'each') return holds === 1 ? '1\u00a0piece' : `${figure}\u00a0pieces`;
  return readUnits(`${figure}\u00a0${unit}`, display);
}

interface PacksTaken {
  readonly sale: 'packs' | 'cut' | 'own';
  readonly unit: string;
  readonly packs: readonly { readonly amount: number; readonly count: number }[];
}

/** Packs to buy: `1 × 45 L, 2 × 10 L`; `cut to size`; `own` for goods that are never bought. */
export function packsWords({ sale, unit, packs }: PacksTaken, display: Display): string {
  if (sale === 'cut') return 'cut to size';
  if (sale === 'own') return 'our own';
  const say = ({ amount, count }: PacksTaken['packs'][number]) =>
    unit === 'each' && amount === 1 ? String(count) : `${count} × ${packWords(amount, unit, display)}`;
  return packs.map(say).join(', ');
}
