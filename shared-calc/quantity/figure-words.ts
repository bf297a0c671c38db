import { unitWords } from './unit-words.ts';
import { showGiven, shownUnit, showValue, type Display } from './shown-unit.ts';

/** The unit that a line's figures are shown in, as it is read. */
export function shownUnitWords(unit: string, display: Display): string {
  return unitWords(shownUnit(unit, display), display.currency);
}

interface BoxWorked {
  readonly value: number | string | boolean | undefined;
  /** The rule that it is worked by. */
  readonly rule?: object | undefined;
}

/** A box's figure as it is painted: worked ones with all decimals of their unit, a given one as it is given: `100`. */
export function boxFigure({ value, rule }: BoxWorked, unit: string, display: Display): string {
  if (value === undefined) return '';
  return (rule ? showValue : showGiven)(value, unit, display);
}

/** A figure with its unit as it is read: `26.75 °C`, `full`, `yes`. */
export function figureWords(value: number | string | boolean, unit: string, display: Display): string {
  const figure = showValue(value, unit, display);
  const words = typeof value === 'number' ? shownUnitWords(unit, display) : '';
  return words === '' ? figure : `${figure}\u00a0${words}`;
}

/** A sentence of the core with its units as they are read; they stand behind a space that does not break. */
export function readUnits(sentence: string, display: Display): string {
  return sentence.replaceAll(/(?<=[\d.,]\u00a0)[\w/.%]*\w/g, (unit) => unitWords(unit, display.currency));
}
