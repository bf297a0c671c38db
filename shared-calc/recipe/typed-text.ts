import { shownUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { readFigure, tidyText } from '#shared-calc/quantity/read-figure.ts';
import { findUnit } from '#shared-calc/quantity/unit.ts';
import { joinRange, splitRange, type RangeTexts } from './range-text.ts';
import { storedText } from './stored-text.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { boxFigure, shownUnitWords } from '#shared-calc/quantity/figure-words.ts';

interface StoredCell {
  readonly text: string;
  /** The parsed rule, if the text is a rule. */
  readonly rule?: object | undefined;
}

/** The text that an editor opens with: the stored text, with the workshop's decimal sign in a figure. */
export function entryText({ text, rule }: StoredCell, { decimalComma }: Display): string {
  if (rule || !decimalComma) return text;
  return text.replaceAll(/\d[\d,]*\.\d+/g, (number) => number.replaceAll(',', '').replace('.', ','));
}

const bare = /^[+-]?\s*[\d.,]+(?:\s+\d+\/\d+|\/\d+)?(?:[eE][+-]?\d+)?$/;

/**
 * The text to store: a bare number gets the unit that the line is shown in, and a figure written with the workshop's
 * comma gets a point. A rule, a word and unreadable text stay as typed.
 */
export function writtenText(typed: string, line: Line, display: Display): string {
  const text = typed.trim();
  if (text === '' || line.unit === 'choice' || line.unit === 'yes_no') return text;
  const range = splitRange(text);
  return range ? writtenRange(range, text, line, display) : writtenFigure(text, line, display);
}

function writtenRange(range: RangeTexts, text: string, line: Line, display: Display): string {
  const [likely = '', least = '', most = ''] = [range.likely, range.least, range.most].map((each) =>
    writtenFigure(each, line, display),
  );
  const isRead = [likely, least, most].every((each) => readFigure(each, { unit: line.unit }).ok);
  return isRead ? joinRange({ likely, least, most }) : text;
}

function writtenFigure(text: string, line: Line, display: Display): string {
  const shown = shownUnit(line.unit, display);
  const comma = display.decimalComma ?? false;
  if (!readFigure(text, { unit: shown, decimalComma: comma }).ok) return text;
  const kept = storedText(text, { unit: shown }, comma);
  const plain = kept.ok ? kept.value : text;
  const isBare = bare.test(tidyText(plain));
  return isBare && takesUnit(shown) ? `${plain}\u0020${shown}` : plain;
}

/** True if the text is ambiguous: `1.234` may be a decimal or thousands. */
export function hasTwoReadings(typed: string, line: Line, { decimalComma = false }: Display): boolean {
  return !storedText(typed, line, decimalComma).ok;
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
  if (!figure?.ok) return text === '' ? 'no figure' : text;
  const unit = shownUnitWords(line.unit, display);
  const words = boxFigure(figure.value, line.unit, display);
  return unit === '' ? words : `${words} ${unit}`;
}
