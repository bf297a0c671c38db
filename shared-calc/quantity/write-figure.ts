import { inchFraction } from './inch-fraction.ts';
import { fromBase, lookOf, unitOf, type UnitLook } from './unit.ts';

export interface WriteOptions {
  readonly decimalComma?: boolean;
  /** Decimals in addition to the unit's own, so that the parts of a working add up. */
  readonly extraDecimals?: number;
  /** Inches as read off a rule, `23 5/8`, wherever no decimals are added. */
  readonly fractions?: boolean;
  /** Decimals of the currency. */
  readonly moneyDecimals?: number;
}

const COMPOUND: UnitLook = { decimals: 2 };
const compounds: Readonly<Record<string, UnitLook>> = { 'each/m2': { decimals: 0 }, 'kg/L': { decimals: 4 } };

/**
 * A base-unit figure for a builder, without its unit: litres, grams and kilograms with two decimals, areas with four,
 * millimetres and counts with none, and more where a small figure would be off by more than 1 %; thousands separators,
 * but never in mm. Rounded only for display, half away from zero.
 */
export function writeFigure(base: number, unit: string, options: WriteOptions = {}): string {
  const value = cleanNoise(fromBase(base, unitOf(unit)));
  const read = options.fractions && unit === 'in' && !options.extraDecimals ? inchFraction(value) : undefined;
  if (read !== undefined) return read;
  return writeNumber(value, decimalsFor(value, unit, options), { ...options, group: unit !== 'mm' });
}

/** The same with its unit: `16.02 L`, `12 %`; a plain number has none. */
export function writeWithUnit(base: number, unit: string, options: WriteOptions & { currency?: string } = {}): string {
  return `${writeFigure(base, unit, options)}${unitBehind(unit, options.currency)}`;
}

/** A unit as it stands behind a figure, with the space between them; a plain number has none. */
export function unitBehind(unit: string, currency = 'money'): string {
  return unit === 'number' || unit === 'share' ? '' : `\u00a0${unit === 'money' ? currency : unit}`;
}

/** Figures for programs: binary noise beyond 13 digits is removed, otherwise unrounded. */
export function cleanNoise(value: number): number {
  return Number.isFinite(value) ? Number(value.toPrecision(13)) : value;
}

/** A plain number with this many decimals, without binary noise, rounded half away from zero. */
export function writeNumber(
  value: number,
  decimals: number,
  options: { readonly decimalComma?: boolean; readonly group?: boolean } = {},
): string {
  const fixed = roundHalfAway(value, decimals).toFixed(decimals);
  const [whole = '', part] = fixed.replace('-', '').split('.');
  const mark = options.decimalComma ? '.' : ',';
  const grouped = options.group === false ? whole : whole.replaceAll(/\B(?=(\d{3})+$)/g, mark);
  const sign = Number(fixed) < 0 ? '-' : '';
  return part === undefined ? sign + grouped : `${sign}${grouped}${options.decimalComma ? ',' : '.'}${part}`;
}

/** Rounds half away from zero to this many decimals, after removing binary noise of 1e-9. */
export function roundHalfAway(value: number, decimals: number): number {
  const scale = 10 ** decimals;
  const scaled = Math.abs(value) * scale;
  return (Math.sign(value) * Math.floor(scaled + 0.5 + Math.min(1e-9, scaled * 1e-12 + 1e-12))) / scale;
}

function decimalsFor(
  value: number,
  unit: string,
  { extraDecimals: extra = 0, moneyDecimals = 2 }: WriteOptions,
): number {
  if (unit === 'money') return moneyDecimals + extra;
  if (unit.startsWith('money/')) return closeDecimals(value, moneyDecimals);
  const isWhole = Math.abs(value - Math.round(value)) < 1e-9;
  const { decimals, trims } = lookOf(unit) ?? compounds[unit] ?? COMPOUND;
  if (isWhole && trims) return 0;
  return closeDecimals(value, trims ? Math.max(1, decimals) : decimals) + extra;
}

/** What is shown differs from the figure by this share of it at most: 0.0131 lb is 0.013 lb, never 0.01. */
const SHOWN_WITHIN = 0.01;
/** A figure that shows nothing within so many decimals more is binary noise around 0. */
const MOST_MORE = 6;

/** A figure's own decimals, and as many more as bring what is shown within 1 % of it, or within a share that is given. */
export function closeDecimals(value: number, own: number, within = SHOWN_WITHIN): number {
  const size = Math.abs(value);
  if (size * 10 ** own * within >= 0.5) return own;
  for (let decimals = own; decimals <= own + MOST_MORE; decimals += 1) {
    if (Math.abs(roundHalfAway(size, decimals) - size) <= within * size) return decimals;
  }
  return own;
}
