import { readFigure } from './read-figure.ts';
import { shownUnit, type Display } from './shown-unit.ts';
import { lookOf } from './unit.ts';
import { unitWords } from './unit-words.ts';

/** A figure as a person wrote it. */
export interface AsTyped {
  readonly figure: string;
  /** It stands with a unit of its own, and takes none beside it. */
  readonly whole: boolean;
}

/**
 * The stored text of a figure as it is shown: `23 1/2` beside the unit `in`, `390 ft` whole where metres are shown.
 * `undefined` for a text that says no more than the figure itself does: a bare number, decimals in the unit shown.
 */
export function asTyped(text: string, unit: string, shown: string, display: Display): AsTyped | undefined {
  const read = readFigure(text, { unit });
  if (!read.ok || read.value.written === 'bare') return undefined;
  const written = display.decimalComma ? text.replaceAll(/(?<=\d)\.(?=\d)/g, ',') : text;
  if (read.value.written === 'in parts' || read.value.unit.symbol !== shown) {
    return { figure: unitWords(written, display.currency), whole: true };
  }
  const isFraction = /[/\u00bc-\u00be\u215b-\u215e]/.test(text) || (display.fractions === true && shown === 'in');
  return isFraction ? { figure: withoutUnit(written), whole: false } : undefined;
}

/** The same for a line, in the unit that its figures are shown in. */
export function lineAsTyped(text: string, unit: string, display: Display): AsTyped | undefined {
  return asTyped(text, unit, shownUnit(unit, display), display);
}

/** Whether a text is a figure in a US unit, which no recipe of the program is written in. */
export function isInUsUnit(text: string, unit: string): boolean {
  const read = readFigure(text, { unit });
  return read.ok && read.value.written !== 'bare' && lookOf(read.value.unit.symbol)?.customary === true;
}

function withoutUnit(text: string): string {
  return text.replace(/\s*[^\d\s.,/'\u00bc-\u00be\u215b-\u215e][^\d]*$|\s*"$/u, '');
}
