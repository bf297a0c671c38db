import { kindOfUnit, namedKinds, sayKind, type FigureKind } from './kind.ts';
import { fromBase, lookOf, unitOf, unitsLike } from './unit.ts';
import { isLargerScale, usUnitFor, type UnitSystem } from './unit-systems.ts';
import { writeFigure, writeWithUnit, type WriteOptions } from './write-figure.ts';

/** How figures are shown: the system of units with its exceptions by kind, the decimal sign, the currency. */
export interface Display extends WriteOptions {
  /** Left out: metric. */
  readonly units?: UnitSystem;
  /** By kind: a unit, or the other system. */
  readonly unitsShown: Readonly<Record<string, string>>;
  readonly currency: string;
  /** Left out: year first. */
  readonly dateOrder?: 'ymd' | 'dmy' | 'mdy';
}

export const plainDisplay: Display = { unitsShown: {}, currency: 'cr', moneyDecimals: 2 };

/** The same display with every figure in the unit of its own line, as data is written. */
export function inOwnUnits(display: Display): Display {
  return { ...display, units: 'metric', unitsShown: {}, fractions: false };
}

/** The unit that a line's figures are shown in: the workshop's system, unless it has an exception for the kind. */
export function shownUnit(unit: string, display: Display): string {
  const kind = kindOfUnit(unit);
  if (kind.is !== 'figure') return unit;
  const name = sayKind(kind);
  // A step is seen in the degrees of the temperature that it is added to.
  if (name === 'temperature step') return shownUnit('degC', display) === 'degF' ? usUnitFor(unit) : unit;
  const chosen = display.unitsShown[name];
  if (chosen === undefined || isSystem(chosen)) return (chosen ?? display.units) === 'us' ? usUnitFor(unit) : unit;
  return asChosen(chosen, unit, kind);
}

function isSystem(chosen: string): chosen is UnitSystem {
  return chosen === 'metric' || chosen === 'us';
}

function asChosen(chosen: string, unit: string, kind: FigureKind): string {
  if (isLargerScale(unit, chosen)) return lookOf(chosen)?.customary ? usUnitFor(unit) : unit;
  // Air in m3/h is a flow, but nobody wants it in mL/d: a unit that is no choice itself stays.
  const allowed = choicesOf(kind);
  return allowed.includes(chosen) && allowed.includes(unit) ? chosen : unit;
}

/** Whether small lengths are shown in inches. */
export function showsInches(display: Display): boolean {
  return shownUnit('mm', display) === 'in';
}

/** A pound or a gallon of which a quarter is not reached is said in ounces. */
const smaller: Readonly<Record<string, string>> = { gal: 'fl_oz', lb: 'oz' };

/** The unit for one figure in a sentence: as `shownUnit`, with small amounts of a US workshop in the smaller unit. */
export function unitFor(value: number, unit: string, display: Display): string {
  const shown = shownUnit(unit, display);
  const less = shown === unit || display.units !== 'us' ? undefined : smaller[shown];
  if (less === undefined || display.unitsShown[sayKind(kindOfUnit(unit))] !== undefined) return shown;
  const size = Math.abs(fromBase(value, unitOf(shown)));
  return size > 0 && size < 0.25 ? less : shown;
}

function choicesOf(kind: FigureKind): readonly string[] {
  if (kind.sort === 'reading') return unitsLike('degC');
  return namedKinds.find((each) => each.name === sayKind(kind))?.shown ?? [];
}

/** A value in a line's unit, without the unit: `16.02`, `full`, `yes`. */
export function showValue(value: number | string | boolean, unit: string, display: Display): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'string') return value;
  return writeFigure(value, shownUnit(unit, display), display);
}

/**
 * A given value without the unit, to its own precision: `100`, where a worked-out one is `73.27`; money always has its
 * coins.
 */
export function showGiven(value: number | string | boolean, unit: string, display: Display): string {
  const figure = showValue(value, unit, display);
  if (typeof value !== 'number' || unit.startsWith('money')) return figure;
  return figure.includes(display.decimalComma ? ',' : '.') ? figure.replace(/[.,]?0+$/, '') : figure;
}

/** A value with its unit: `16.02 L`, `full`. */
export function showWithUnit(value: number | string | boolean, unit: string, display: Display): string {
  return typeof value === 'number'
    ? writeWithUnit(value, unitFor(value, unit, display), display)
    : showValue(value, unit, display);
}
