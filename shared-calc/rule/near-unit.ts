import { unitSymbols } from '#shared-calc/quantity/unit.ts';
import { nearestName } from './nearest.ts';

/** Common spellings of units that are too far from the symbol for the edit distance to find. */
const usual: Readonly<Record<string, string>> = {
  c: 'degC',
  celsius: 'degC',
  degrees: 'degC',
  f: 'degF',
  fahrenheit: 'degF',
  kelvin: 'K',
  millimetre: 'mm',
  millimeter: 'mm',
  centimetre: 'cm',
  centimeter: 'cm',
  metre: 'm',
  meter: 'm',
  inch: 'in',
  inche: 'in',
  foot: 'ft',
  feet: 'ft',
  sqm: 'm2',
  sqft: 'ft2',
  litre: 'L',
  liter: 'L',
  ltr: 'L',
  millilitre: 'mL',
  milliliter: 'mL',
  cc: 'mL',
  gallon: 'gal',
  quart: 'qt',
  gram: 'g',
  gr: 'g',
  kilo: 'kg',
  kilogram: 'kg',
  pound: 'lb',
  ounce: 'oz',
  second: 's',
  sec: 's',
  minute: 'min',
  hour: 'h',
  hr: 'h',
  day: 'd',
  week: 'wk',
  year: 'yr',
  y: 'yr',
  watt: 'W',
  joule: 'J',
  percent: '%',
  pc: 'each',
  piece: 'each',
  pascal: 'Pa',
};

/** The unit most likely meant by an unknown one after a number. */
export function nearUnit(word: string): string | undefined {
  const plain = word.toLowerCase();
  const single = plain.length > 1 ? plain.replace(/s$/, '') : plain;
  return usual[plain] ?? usual[single] ?? nearestName(word, unitSymbols);
}
