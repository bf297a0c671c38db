/** Units whose written form differs from the form in rules. */
const shown: Readonly<Record<string, string>> = {
  degC: '°C',
  degF: '°F',
  F_deg: 'F deg',
  m2: 'm²',
  cm2: 'cm²',
  mm2: 'mm²',
  in2: 'in²',
  ft2: 'ft²',
  m3: 'm³',
  in3: 'in³',
  ft3: 'ft³',
  umol: 'µmol',
  fl_oz: 'fl oz',
  dry_qt: 'dry qt',
};

/** Kinds whose figures have no unit. */
const bare = new Set(['choice', 'yes_no', 'number', 'share']);

/** A unit as shown: `each/m²` for `each/m2`, the currency for money, empty if there is none. */
export function unitWords(unit: string, currency: string): string {
  if (bare.has(unit)) return '';
  return unit.replaceAll(/[A-Za-z_]+[23]?/g, (symbol) => (symbol === 'money' ? currency : (shown[symbol] ?? symbol)));
}
