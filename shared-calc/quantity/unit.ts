import { dimension, perDimension, PLAIN, timesDimension, type Dimension } from './dimension.ts';

/**
 * A unit: one of it is `times / over` coherent base units (m, kg, s, K, the currency, mol).
 * Kept as a pair of exact numbers, so that 40 mm is 40 / 1000 and not 40 x 0.001.
 * `zero` is set for degC and degF alone: the base (degC) reading at 0 of this unit.
 */
export interface Unit {
  readonly symbol: string;
  readonly dimension: Dimension;
  readonly times: number;
  readonly over: number;
  readonly zero?: number;
}

const length = dimension({ length: 1 });
const area = dimension({ length: 2 });
const volume = dimension({ length: 3 });
const mass = dimension({ mass: 1 });
const time = dimension({ time: 1 });
const temperature = dimension({ temperature: 1 });
const pressure = dimension({ mass: 1, length: -1, time: -2 });
const energy = dimension({ mass: 1, length: 2, time: -2 });
const power = dimension({ mass: 1, length: 2, time: -3 });
const light = dimension({ light: 1 });

const POUND_GRAMS = 45359237; // x 1e-5 g, exact by definition

/** Every simple unit; factors exact by definition (NIST SP 811 App. B, Handbook 44 App. C). */
const simpleUnits: readonly Unit[] = [
  unit('mm', length, 1, 1000),
  unit('cm', length, 1, 100),
  unit('m', length, 1, 1),
  unit('km', length, 1000, 1),
  unit('in', length, 254, 10000),
  unit('ft', length, 3048, 10000),
  unit('mm2', area, 1, 1e6),
  unit('cm2', area, 1, 1e4),
  unit('m2', area, 1, 1),
  unit('in2', area, 254 ** 2, 1e8),
  unit('ft2', area, 3048 ** 2, 1e8),
  unit('mL', volume, 1, 1e6),
  unit('L', volume, 1, 1000),
  unit('m3', volume, 1, 1),
  unit('in3', volume, 254 ** 3, 1e12),
  unit('ft3', volume, 3048 ** 3, 1e12),
  unit('fl_oz', volume, 295735295625, 1e16),
  unit('qt', volume, 946352946, 1e12),
  unit('dry_qt', volume, 1101220942715, 1e15),
  unit('gal', volume, 3785411784, 1e12),
  unit('g', mass, 1, 1000),
  unit('kg', mass, 1, 1),
  unit('oz', mass, POUND_GRAMS, 16e8),
  unit('lb', mass, POUND_GRAMS, 1e8),
  { ...unit('degC', temperature, 1, 1), zero: 0 },
  { ...unit('degF', temperature, 5, 9), zero: -160 / 9 },
  unit('K', temperature, 1, 1),
  unit('Pa', pressure, 1, 1),
  unit('kPa', pressure, 1000, 1),
  unit('bar', pressure, 1e5, 1),
  unit('psi', pressure, 6894757293168, 1e9),
  unit('s', time, 1, 1),
  unit('min', time, 60, 1),
  unit('h', time, 3600, 1),
  unit('d', time, 86400, 1),
  unit('wk', time, 604800, 1),
  unit('yr', time, 31536000, 1),
  unit('J', energy, 1, 1),
  unit('kWh', energy, 3600000, 1),
  unit('W', power, 1, 1),
  unit('mol', light, 1, 1),
  unit('umol', light, 1, 1e6),
  unit('%', PLAIN, 1, 100),
  unit('each', PLAIN, 1, 1),
  unit('number', PLAIN, 1, 1),
  unit('share', PLAIN, 1, 1),
  unit('money', dimension({ money: 1 }), 1, 1),
];

const bySymbol: ReadonlyMap<string, Unit> = new Map(simpleUnits.map((each) => [each.symbol, each]));

/** Symbols that a builder may type after a number; 'number' and 'share' are names of kinds only. */
export const unitSymbols: readonly string[] = simpleUnits
  .map((each) => each.symbol)
  .filter((symbol) => symbol !== 'number' && symbol !== 'share');

export function isUnitSymbol(word: string): boolean {
  return unitSymbols.includes(word);
}

const known = new Map<string, Unit>();

/**
 * Reads a unit such as `mm`, `g/L`, `umol/m2/s` or `W/m2/K` ('/' divides by what follows it alone,
 * '.' multiplies). Inside a compound degC and degF are steps. `undefined` where a symbol is unknown.
 */
export function findUnit(text: string): Unit | undefined {
  const ready = known.get(text) ?? bySymbol.get(text);
  if (ready) return ready;
  const made = readCompound(text);
  if (made) known.set(text, made);
  return made;
}

/** A unit that the program itself names; an unknown one is a bug. */
export function unitOf(symbol: string): Unit {
  const found = findUnit(symbol);
  if (!found) throw new Error(`no unit ${symbol}`);
  return found;
}

/** From a figure in this unit to coherent base units: 40 mm is 0.04; 98.6 degF is 37. */
export function toBase(value: number, of: Unit): number {
  if (of.zero !== undefined && of.symbol === 'degF') return (value - 32) / 1.8;
  return (value * of.times) / of.over;
}

/** From coherent base units to a figure in this unit. */
export function fromBase(value: number, of: Unit): number {
  if (of.zero !== undefined && of.symbol === 'degF') return value * 1.8 + 32;
  return (value * of.over) / of.times;
}

function readCompound(text: string): Unit | undefined {
  const parts = text.split(/([/.])/);
  let made: Unit | undefined;
  for (let at = 0; at < parts.length; at += 2) {
    const next = bySymbol.get(parts[at] ?? '');
    if (!next) return undefined;
    made = made ? join(made, next, parts[at - 1] === '/') : next;
  }
  return made && parts.length > 1 ? { ...plainStep(made), symbol: text } : undefined;
}

function join(left: Unit, right: Unit, divides: boolean): Unit {
  return divides
    ? unit('', perDimension(left.dimension, right.dimension), left.times * right.over, left.over * right.times)
    : unit('', timesDimension(left.dimension, right.dimension), left.times * right.times, left.over * right.over);
}

function plainStep(of: Unit): Unit {
  return unit(of.symbol, of.dimension, of.times, of.over);
}

function unit(symbol: string, of: Dimension, times: number, over: number): Unit {
  return { symbol, dimension: of, times, over };
}
