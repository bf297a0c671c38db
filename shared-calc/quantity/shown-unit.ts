import { kindOfUnit, namedKinds, sayKind, type FigureKind } from './kind.ts';
import { unitsLike } from './unit.ts';
import { writeFigure, writeWithUnit, type WriteOptions } from './write-figure.ts';

/** How figures are shown: the units chosen per kind, the decimal sign, the currency. */
export interface Display extends WriteOptions {
  readonly unitsShown: Readonly<Record<string, string>>;
  readonly currency: string;
}

export const plainDisplay: Display = { unitsShown: {}, currency: 'cr', moneyDecimals: 2 };

/** The unit that a line's figures are shown in: the workshop's choice for the kind, otherwise the line's own. */
export function shownUnit(unit: string, display: Display): string {
  const kind = kindOfUnit(unit);
  if (kind.is !== 'figure') return unit;
  // A step is seen in the degrees of the temperature that it is added to.
  if (sayKind(kind) === 'temperature step') return display.unitsShown['temperature'] === 'degF' ? 'F_deg' : unit;
  const chosen = display.unitsShown[sayKind(kind)];
  if (chosen === undefined || chosen === unit) return unit;
  // Air in m3/h is a flow, but nobody wants it in mL/d: a unit that is no choice itself stays.
  const allowed = choicesOf(kind);
  return allowed.includes(chosen) && allowed.includes(unit) ? chosen : unit;
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
    ? writeWithUnit(value, shownUnit(unit, display), display)
    : showValue(value, unit, display);
}
