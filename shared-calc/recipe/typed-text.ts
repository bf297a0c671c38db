import { shownUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import type { ReadFigure } from '#shared-calc/quantity/figure-reading.ts';
import { readFigure } from '#shared-calc/quantity/read-figure.ts';
import { findUnit } from '#shared-calc/quantity/unit.ts';
import type { Result } from '#shared-calc/result.ts';
import { separated } from '#shared-calc/rule/separated.ts';
import { joinRange, splitRange } from './range-text.ts';
import type { BoxFault } from './read-box.ts';
import { storedText } from './stored-text.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { lineAsTyped } from '#shared-calc/quantity/as-typed.ts';
import { boxFigure, shownUnitWords } from '#shared-calc/quantity/figure-words.ts';

/**
 * The text that an editor opens with: the stored text, with the workshop's decimal sign in a figure. A rule keeps its
 * point; with the decimal comma set, `;` separates its arguments.
 */
export function entryText(text: string, { decimalComma = false }: Display): string {
  if (!decimalComma) return text;
  if (!readFigure(splitRange(text)?.likely ?? text, { unit: 'number' }).ok) return separated(text);
  return text.replaceAll(/[\d,]*\.\d+/g, (number) => number.replaceAll(',', '').replace('.', ','));
}

/** The text to store: `storedText` of what was typed, where a bare number has the unit that the line is shown in. */
export function writtenText(typed: string, line: Line, display: Display): Result<string, BoxFault> {
  return storedText(withShownUnit(typed, line, display), line, display.decimalComma ?? false);
}

/** A typed text without blanks around it; a bare number gets the unit that its line is shown in, in a range too. */
export function withShownUnit(typed: string, line: Line, display: Display): string {
  const text = typed.trim();
  const range = splitRange(text);
  if (range) {
    const [likely = '', least = '', most = ''] = [range.likely, range.least, range.most].map((each) =>
      withShownUnit(each, line, display),
    );
    return joinRange({ likely, least, most });
  }
  const unit = shownUnit(line.unit, display);
  if (!takesUnit(unit)) return text;
  const read = readFigure(text, { unit, decimalComma: display.decimalComma ?? false });
  return read.ok && read.value.written === 'bare' ? `${text} ${unit}` : text;
}

function takesUnit(unit: string): boolean {
  return findUnit(unit) !== undefined && !['each', 'number', 'share', 'money'].includes(unit);
}

/** A figure of a line in words for a label: `15 mm`; a rule or a word unchanged. */
export function textInLabel(text: string, line: Line, display: Display): string {
  const range = splitRange(text);
  if (range) {
    const [likely, least, most] = [range.likely, range.least, range.most].map((each) =>
      textInLabel(each, line, display),
    );
    return `${likely} (${least} to ${most})`;
  }
  const figure = line.unit === 'choice' || line.unit === 'yes_no' ? undefined : readFigure(text, { unit: line.unit });
  if (!figure?.ok) return text === '' ? 'no figure' : entryText(text, display);
  return figureInLabel(figure.value, text, line, display);
}

function figureInLabel(figure: ReadFigure, text: string, line: Line, display: Display): string {
  const typed = lineAsTyped(text, line.unit, display);
  if (typed?.whole) return typed.figure;
  const unit = shownUnitWords(line.unit, display);
  const words = typed?.figure ?? boxFigure(figure, line.unit, display);
  return unit === '' ? words : `${words} ${unit}`;
}
