/** The two systems that a workshop chooses between; each line is written in a unit of its own. */
export type UnitSystem = 'metric' | 'us';

/** What a US workshop sees for each metric unit, in the same scale: a gap in inches, an altitude in feet. */
const us: Readonly<Record<string, string>> = {
  mm: 'in',
  cm: 'in',
  m: 'ft',
  km: 'mi',
  mm2: 'in2',
  cm2: 'in2',
  m2: 'ft2',
  mL: 'fl_oz',
  L: 'gal',
  m3: 'ft3',
  g: 'oz',
  kg: 'lb',
  degC: 'degF',
  K: 'F_deg',
  kPa: 'psi',
  bar: 'psi',
};

/** Compounds with light or power are written in metric units everywhere. */
const everywhere = /\b(?:u?mol|k?W|J|kWh)\b/;

/** The unit of a US workshop for a unit; the same if it is one already, or has no counterpart. */
export function usUnitFor(unit: string): string {
  if (/[/.]/.test(unit) && everywhere.test(unit)) return unit;
  return unit
    .split(/([/.])/)
    .map((part) => us[part] ?? part)
    .join('');
}

/** Lengths by scale: a choice for one scale says nothing of a larger one. */
const lengthScale: Readonly<Record<string, number>> = { mm: 1, cm: 1, in: 1, m: 2, ft: 2, km: 3, mi: 3 };

/** Whether a unit is of a larger scale than another: nobody wants an altitude in inches. */
export function isLargerScale(unit: string, than: string): boolean {
  return (lengthScale[unit] ?? 0) > (lengthScale[than] ?? 0);
}
