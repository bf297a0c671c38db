import { failed, ok, type Result } from '#shared-calc/result.ts';
import { sameDimension } from './dimension.ts';
import type { FigureFault, ReadFigure, ReadOptions } from './figure-reading.ts';
import { readNumber } from './read-number.ts';
import { findUnit, toBase, unitOf, type Unit } from './unit.ts';
import { unitCalled } from './unit-spellings.ts';

interface Part {
  readonly text: string;
  readonly unit: Unit;
}

const part = /(\s*(?:,\s|and\s|-(?=\s*\d))?\s*)(\d+ +\d+\/\d+|\d+-\d+\/\d+|\d+\/\d+|\d+(?:[.,]\d+)?)\s*([A-Za-z_]+)?/y;
/** The unit of a last number without one, by the unit in front of it: `2 ft 6`. */
const smaller: Readonly<Record<string, string>> = { ft: 'in', h: 'min' };

/**
 * Parses a figure in parts of falling size, `2 ft 6 in`, `3 lb 4 oz`, `5 h 20 min`, and hours with a colon, `1:30 h`;
 * `undefined` for any other text. `1:30` alone on a line of time has two readings.
 */
export function readParts(
  tidy: string,
  { unit, decimalComma = false }: ReadOptions,
): Result<ReadFigure, FigureFault> | undefined {
  const sign = /^[+-]?\s*/.exec(tidy)?.[0] ?? '';
  const parts = partsIn(tidy.slice(sign.length));
  return parts ? sumOf(parts, sign.startsWith('-') ? -1 : 1, decimalComma) : readClock(tidy, unit);
}

function sumOf(parts: readonly Part[], sign: 1 | -1, decimalComma: boolean): Result<ReadFigure, FigureFault> {
  let sum = 0;
  for (const { text, unit } of parts) {
    const number = readNumber(text.replace(/^(\d+)-(?=\d+\/)/, '$1 '), decimalComma);
    if (!number.ok) return number;
    sum += toBase(number.value, unit);
  }
  return ok({ value: sign * sum, unit: parts[0]?.unit ?? unitOf('number'), written: 'in parts' });
}

/** At least two parts, or one that has its fraction behind a dash: `3-1/4 in`. */
function partsIn(text: string): readonly Part[] | undefined {
  const parts: Part[] = [];
  part.lastIndex = 0;
  for (let end = 0; end < text.length; end = part.lastIndex) {
    const next = nextPart(text, parts.at(-1)?.unit);
    if (!next) return undefined;
    parts.push(next);
  }
  return parts.length > 1 || parts[0]?.text.includes('-') ? parts : undefined;
}

function nextPart(text: string, before: Unit | undefined): Part | undefined {
  const found = part.exec(text);
  if (!found) return undefined;
  const [, gap = '', number = '', word = ''] = found;
  const isLast = gap !== '' && part.lastIndex === text.length;
  const unit = unitOfPart(word, isLast ? before : undefined);
  return unit && (!before || isSmaller(unit, before)) ? { text: number, unit } : undefined;
}

/** The unit of a part; a last number without one has the unit below that of the part in front of it. */
function unitOfPart(word: string, before: Unit | undefined): Unit | undefined {
  const called = word === '' && before ? smaller[before.symbol] : unitCalled(word);
  const unit = findUnit(called ?? '');
  return unit?.zero === undefined ? unit : undefined;
}

function isSmaller(unit: Unit, before: Unit): boolean {
  return sameDimension(unit.dimension, before.dimension) && toBase(1, unit) < toBase(1, before);
}

function readClock(tidy: string, unit: string): Result<ReadFigure, FigureFault> | undefined {
  const [, hours, minutes, word] = /^(\d{1,3}):([0-5]\d)(?:\s*(h|hrs?|hours?))?$/.exec(tidy) ?? [];
  if (hours === undefined || minutes === undefined) return undefined;
  const hour = unitOf('h');
  if (word !== undefined) {
    return ok({ value: Number(hours) * 3600 + Number(minutes) * 60, unit: hour, written: 'in parts' });
  }
  const own = findUnit(unit);
  if (!own || !sameDimension(own.dimension, hour.dimension)) return undefined;
  const readings = [`${hours} h ${Number(minutes)} min`, `${hours} min ${Number(minutes)} s`];
  return failed({ kind: 'two-readings', text: tidy, readings });
}
