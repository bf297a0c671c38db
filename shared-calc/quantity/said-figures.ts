import { shownUnit, type Display } from './shown-unit.ts';
import { findUnit, fromBase, toBase, unitOf } from './unit.ts';
import { writeNumber } from './write-figure.ts';

const figure = String.raw`\d[\d,]*(?:\.\d+)?`;
const unit = String.raw`[A-Za-z]+\d?(?:/[A-Za-z]+\d?)*`;
const figures = new RegExp(String.raw`(?<![\w.])${figure}`, 'g');
const wordsBehind = new RegExp(String.raw`(?<=\d[ \u00a0])${unit}`, 'g');
const figuresWithUnit = new RegExp(String.raw`(?<![\w.])${figure}(?: (?:to|or|and) ${figure})?[ \u00a0]${unit}`, 'g');

/** Significant digits that a converted figure has at least: 1 mm is 0.039 in. */
const LEAST_DIGITS = 2;

/**
 * Figures of one unit as a workshop says them: `20 to 45 degC` as `68 to 113 degF`, `60 degC, within hours at 37` as
 * `140 degF, within hours at 99`. A unit that the workshop shows as it is leaves the words as they are.
 */
export function sayFigures(words: string, display: Display): string {
  const found = [...words.matchAll(wordsBehind)].find(([word]) => findUnit(word));
  if (!found) return words;
  const [from] = found;
  const to = shownUnit(from, display);
  if (to === from) return words;
  const convert = (part: string) => part.replaceAll(figures, (each) => converted(each, [from, to], display));
  return convert(words.slice(0, found.index)) + to + convert(words.slice(found.index + from.length));
}

/** A sentence of the program with all its figures as a workshop says them; for no words that a person wrote. */
export function sayAllFigures(sentence: string, display: Display): string {
  return sentence.replaceAll(figuresWithUnit, (each) => sayFigures(each, display));
}

function converted(text: string, [from, to]: readonly [string, string], display: Display): string {
  const plain = text.replaceAll(',', '');
  const value = fromBase(toBase(Number(plain), unitOf(from)), unitOf(to));
  return writeNumber(value, to === 'degF' || to === 'F_deg' ? degrees(plain) : decimals(plain, value), display);
}

/** A degree of Fahrenheit is finer than one of Celsius: decimals are not added, and one is enough. */
function degrees(plain: string): number {
  return Math.min(1, decimalsIn(plain));
}

function decimals(plain: string, value: number): number {
  const digits = Math.max(LEAST_DIGITS, plain.replace('.', '').replace(/^0+/, '').length);
  return value === 0 ? 0 : Math.max(0, digits - 1 - Math.floor(Math.log10(Math.abs(value))));
}

function decimalsIn(plain: string): number {
  return plain.split('.')[1]?.length ?? 0;
}
