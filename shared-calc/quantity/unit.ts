import { dimension, perDimension, PLAIN, sameDimension, timesDimension, type Dimension } from './dimension.ts';

/**
 * A unit: one of it is `times / over` coherent base units (m, kg, s, K, the currency, mol). Stored as a pair of exact
 * numbers, so that 40 mm is 40 / 1000 and not 40 x 0.001. `zero` is set for degC and degF alone: their reading at 0
 * degC, the base of temperatures.
 */
export interface Unit {
  readonly symbol: string;
  readonly dimension: Dimension;
  readonly times: number;
  readonly over: number;
  readonly zero?: number;
}

/** How figures in a unit are written, and in which system the unit is. */
export interface UnitLook {
  readonly decimals: number;
  /** A whole figure is written without decimals, a fraction with at least one. */
  readonly trims?: true;
  /** A US unit, listed after the metric ones. */
  readonly customary?: true;
  /** May be typed, but no workshop sees its figures in it. */
  readonly typedOnly?: true;
  readonly zero?: number;
}

interface SimpleUnit extends Unit, UnitLook {}

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

/**
 * Every simple unit, those of a dimension in display order; factors exact by definition (NIST SP 811 App. B, Handbook
 * 44 App. C).
 */
const simpleUnits: readonly SimpleUnit[] = [
  unit('mm', length, [1, 1000], { decimals: 0, trims: true }),
  unit('cm', length, [1, 100], { decimals: 1 }),
  unit('m', length, [1, 1], { decimals: 3, trims: true }),
  unit('km', length, [1000, 1], { decimals: 1 }),
  unit('in', length, [254, 10000], { decimals: 2, customary: true }),
  unit('ft', length, [3048, 10000], { decimals: 2, customary: true, trims: true }),
  unit('mi', length, [1609344, 1000], { decimals: 1, customary: true }),
  unit('mm2', area, [1, 1e6], { decimals: 0, typedOnly: true }),
  unit('m2', area, [1, 1], { decimals: 4 }),
  unit('cm2', area, [1, 1e4], { decimals: 1 }),
  unit('in2', area, [254 ** 2, 1e8], { decimals: 1, customary: true }),
  unit('ft2', area, [3048 ** 2, 1e8], { decimals: 2, customary: true }),
  unit('L', volume, [1, 1000], { decimals: 2 }),
  unit('mL', volume, [1, 1e6], { decimals: 1 }),
  unit('m3', volume, [1, 1], { decimals: 4 }),
  unit('gal', volume, [3785411784, 1e12], { decimals: 2, customary: true }),
  unit('qt', volume, [946352946, 1e12], { decimals: 2, customary: true }),
  unit('dry_qt', volume, [1101220942715, 1e15], { decimals: 2, customary: true }),
  unit('fl_oz', volume, [295735295625, 1e16], { decimals: 1, customary: true }),
  unit('ft3', volume, [3048 ** 3, 1e12], { decimals: 3, customary: true }),
  unit('in3', volume, [254 ** 3, 1e12], { decimals: 1, customary: true }),
  unit('kg', mass, [1, 1], { decimals: 2 }),
  unit('g', mass, [1, 1000], { decimals: 2 }),
  unit('lb', mass, [POUND_GRAMS, 1e8], { decimals: 2, customary: true }),
  unit('oz', mass, [POUND_GRAMS, 16e8], { decimals: 1, customary: true }),
  unit('degC', temperature, [1, 1], { decimals: 2, trims: true, zero: 0 }),
  unit('degF', temperature, [5, 9], { decimals: 1, customary: true, zero: 32 }),
  unit('K', temperature, [1, 1], { decimals: 2, trims: true }),
  unit('F_deg', temperature, [5, 9], { decimals: 1, customary: true }),
  unit('kPa', pressure, [1000, 1], { decimals: 3, trims: true }),
  unit('Pa', pressure, [1, 1], { decimals: 0 }),
  unit('bar', pressure, [1e5, 1], { decimals: 3 }),
  unit('psi', pressure, [6894757293168, 1e9], { decimals: 2, customary: true }),
  unit('min', time, [60, 1], { decimals: 1, trims: true }),
  unit('s', time, [1, 1], { decimals: 0, trims: true }),
  unit('h', time, [3600, 1], { decimals: 2, trims: true }),
  unit('d', time, [86400, 1], { decimals: 1, trims: true }),
  unit('wk', time, [604800, 1], { decimals: 1, trims: true }),
  unit('yr', time, [31536000, 1], { decimals: 2 }),
  unit('kWh', energy, [3600000, 1], { decimals: 2 }),
  unit('J', energy, [1, 1], { decimals: 2 }),
  unit('W', power, [1, 1], { decimals: 0, trims: true }),
  unit('kW', power, [1000, 1], { decimals: 2, trims: true }),
  unit('mol', light, [1, 1], { decimals: 2 }),
  unit('umol', light, [1, 1e6], { decimals: 2 }),
  unit('%', PLAIN, [1, 100], { decimals: 1, trims: true }),
  unit('each', PLAIN, [1, 1], { decimals: 0, trims: true }),
  unit('number', PLAIN, [1, 1], { decimals: 2, trims: true }),
  unit('share', PLAIN, [1, 1], { decimals: 2 }),
  unit('money', dimension({ money: 1 }), [1, 1], { decimals: 2 }),
];

const bySymbol: ReadonlyMap<string, SimpleUnit> = new Map(simpleUnits.map((each) => [each.symbol, each]));

/** Symbols that a builder may type after a number; 'number' and 'share' are only names of kinds. */
export const unitSymbols: readonly string[] = simpleUnits
  .map((each) => each.symbol)
  .filter((symbol) => symbol !== 'number' && symbol !== 'share');

/** How a simple unit is written; `undefined` for a compound such as g/L. */
export function lookOf(symbol: string): UnitLook | undefined {
  return bySymbol.get(symbol);
}

/** Simple units that a workshop may choose for a length, a mass and so on. A temperature and a step are two kinds. */
export function unitsLike(plain: string): readonly string[] {
  const like = unitOf(plain);
  const isLike = (each: SimpleUnit) =>
    !each.typedOnly &&
    sameDimension(each.dimension, like.dimension) &&
    (each.zero === undefined) === (like.zero === undefined);
  return simpleUnits.filter(isLike).map((each) => each.symbol);
}

export function isUnitSymbol(word: string): boolean {
  return unitSymbols.includes(word);
}

const known = new Map<string, Unit>();

/**
 * Parses a unit such as `mm`, `g/L`, `umol/m2/s` or `W/m2/K` ('/' divides only by the symbol after it, '.' multiplies).
 * Inside a compound degC and degF are steps. `undefined` if a symbol is unknown.
 */
export function findUnit(text: string): Unit | undefined {
  const ready = known.get(text) ?? bySymbol.get(text);
  if (ready) return ready;
  const made = readCompound(text);
  if (made) known.set(text, made);
  return made;
}

/** A unit named in the program; throws for an unknown one, which is a bug. */
export function unitOf(symbol: string): Unit {
  const found = findUnit(symbol);
  if (!found) throw new Error(`no unit ${symbol}`);
  return found;
}

/** Converts a figure in this unit to coherent base units: 40 mm is 0.04; 98.6 degF is 37. */
export function toBase(value: number, { times, over, zero = 0 }: Unit): number {
  const scaled = (value - zero) * times;
  return Number.isFinite(scaled) ? scaled / over : ((value - zero) / over) * times;
}

/** Converts coherent base units to a figure in this unit. */
export function fromBase(value: number, { times, over, zero = 0 }: Unit): number {
  const scaled = value * over;
  return (Number.isFinite(scaled) ? scaled / times : (value / times) * over) + zero;
}

function readCompound(text: string): Unit | undefined {
  const parts = text.split(/([/.])/);
  let made: Unit | undefined;
  for (let at = 0; at < parts.length; at += 2) {
    const next = bySymbol.get(parts[at] ?? '');
    if (!next) return undefined;
    made = made ? join(made, next, parts[at - 1] === '/') : next;
  }
  return made && parts.length > 1 ? { ...made, symbol: text } : undefined;
}

/** The product or quotient; degC and degF become steps. */
function join(left: Unit, right: Unit, divides: boolean): Unit {
  const [dimensionOf, times, over] = divides
    ? ([perDimension, right.over, right.times] as const)
    : ([timesDimension, right.times, right.over] as const);
  return {
    symbol: '',
    dimension: dimensionOf(left.dimension, right.dimension),
    times: left.times * times,
    over: left.over * over,
  };
}

function unit(symbol: string, of: Dimension, [times, over]: readonly [number, number], look: UnitLook): SimpleUnit {
  return { symbol, dimension: of, times, over, ...look };
}
