import { isInUsUnit, lineAsTyped, type AsTyped } from './as-typed.ts';
import { unitWords } from './unit-words.ts';
import { showGiven, shownUnit, showValue, showWithUnit, type Display } from './shown-unit.ts';

/** The unit that a line's figures are shown in, in its written form. */
export function shownUnitWords(unit: string, display: Display): string {
  return unitWords(shownUnit(unit, display), display.currency);
}

interface BoxWorked {
  readonly value: number | string | boolean | undefined;
  /** The rule it is worked out from. */
  readonly rule?: object | undefined;
  /** What it was written as, and whether a person typed that for this tank or job. */
  readonly text?: string;
  readonly typed?: true;
}

/**
 * A cell's figure as shown: a worked-out one with all decimals of its unit, a given one to its own precision, `100`;
 * one that was typed in another unit as it was typed, `2 ft 6 in`.
 */
export function boxFigure(box: BoxWorked, unit: string, display: Display): string {
  const { value, rule } = box;
  if (value === undefined) return '';
  return boxAsTyped(box, unit, display)?.figure ?? (rule ? showValue : showGiven)(value, unit, display);
}

/** How a cell's figure was typed, where that says more than the figure in the unit shown. */
export function boxAsTyped(
  { value, rule, text, typed }: BoxWorked,
  unit: string,
  display: Display,
): AsTyped | undefined {
  if (rule || text === undefined || typeof value !== 'number') return undefined;
  return typed || isInUsUnit(text, unit) ? lineAsTyped(text, unit, display) : undefined;
}

/** A figure with its unit in its written form: `26.75 °C`, `full`, `yes`. */
export function figureWords(value: number | string | boolean, unit: string, display: Display): string {
  return readUnits(showWithUnit(value, unit, display), display);
}

/** A sentence of the core with its units in their written form, each after a no-break space. */
export function readUnits(sentence: string, display: Display): string {
  return sentence.replaceAll(/(?<=[\d.,]\u00a0)[\w/.%]*\w/g, (unit) => unitWords(unit, display.currency));
}
