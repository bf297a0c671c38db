import { findUnit } from './unit.ts';

/** What people write for a unit, in small letters and in the singular. */
const spelled: Readonly<Record<string, string>> = {
  celsius: 'degC',
  fahrenheit: 'degF',
  kelvin: 'K',
  millimetre: 'mm',
  millimeter: 'mm',
  centimetre: 'cm',
  centimeter: 'cm',
  metre: 'm',
  meter: 'm',
  kilometre: 'km',
  kilometer: 'km',
  inch: 'in',
  inche: 'in',
  foot: 'ft',
  feet: 'ft',
  mile: 'mi',
  sqm: 'm2',
  sqft: 'ft2',
  sqin: 'in2',
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
  lb: 'lb',
  ounce: 'oz',
  second: 's',
  sec: 's',
  minute: 'min',
  min: 'min',
  hour: 'h',
  hr: 'h',
  day: 'd',
  week: 'wk',
  wk: 'wk',
  year: 'yr',
  yr: 'yr',
  watt: 'W',
  joule: 'J',
  percent: '%',
  pc: 'each',
  pcs: 'each',
  piece: 'each',
  pascal: 'Pa',
};

/** One letter means a unit only as a capital: `68 F` is a temperature, `68 c` may be anything. */
const capitals: Readonly<Record<string, string>> = { F: 'degF', C: 'degC' };

/**
 * The unit that a word behind a number is: a symbol, or a spelling that is no other unit (`feet`, `lbs`, `F`);
 * `undefined` for any other word.
 */
export function unitCalled(word: string): string | undefined {
  if (findUnit(word)) return word;
  return capitals[word] ?? spelled[word.toLowerCase()] ?? spelled[singular(word)];
}

function singular(word: string): string {
  return word.toLowerCase().replace(/s$/, '');
}

/** Units of several words, as they are typed. */
const severalWords: readonly (readonly [RegExp, string])[] = [
  [/(?<!\p{L})(?:fl\.? ?oz|fluid ounces?)(?![\p{L}_])/giu, 'fl_oz'],
  [/(?<!\p{L})dry (?:qt|quarts?)(?!\p{L})/giu, 'dry_qt'],
  [/(?<!\p{L})F deg(?!\p{L})/gu, 'F_deg'],
  [/(?<!\p{L})(?:deg|degrees?) ([CF])(?!\p{L})/gu, 'deg$1'],
  [/(?<!\p{L})(?:sq\.? ?|square )(?:ft|feet|foot)(?!\p{L})/giu, 'ft2'],
  [/(?<!\p{L})(?:sq\.? ?|square )(?:in|inch|inches)(?!\p{L})/giu, 'in2'],
  [/(?<!\p{L})(?:sq\.? ?|square )(?:m|met(?:re|er)s?)(?!\p{L})/giu, 'm2'],
  [/(?<!\p{L})(?:cu\.? ?|cubic )(?:ft|feet|foot)(?!\p{L})/giu, 'ft3'],
  [/(?<!\p{L})(?:cu\.? ?|cubic )(?:in|inch|inches)(?!\p{L})/giu, 'in3'],
];

/** A text with each unit of several words as its symbol: `16 fl oz` is `16 fl_oz`. */
export function joinUnitWords(text: string): string {
  return severalWords.reduce((joined, [written, symbol]) => joined.replaceAll(written, symbol), text);
}
