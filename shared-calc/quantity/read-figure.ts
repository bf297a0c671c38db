import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { FigureFault, ReadFigure, ReadOptions } from './figure-reading.ts';
import { readNumber } from './read-number.ts';
import { readParts } from './read-parts.ts';
import { findUnit, toBase, type Unit } from './unit.ts';
import { joinUnitWords, unitCalled } from './unit-spellings.ts';

const numberForms = String.raw`\d+ +\d+\/\d+|\d+\/\d+|[.,]*\d[\d.,]*(?:[ '][\d.,]*\d[\d.,]*)*(?:[eE][+-]?\d+)?`;
const shape = new RegExp(String.raw`^([+-]?\s*(?:${numberForms}))\s*(\D.*)?$`);

/**
 * Parses what a builder types as a figure: `40`, `40 mm`, `1 1/2 in`, `2 ft 6 in`, `7/8"`, `68 F`, `5 h 20 min`,
 * `12,5 mm` (decimal comma set), `12 %`. A bare number gets `unit`. Fails with `not-a-figure` for a rule, and for a
 * number too large to work with.
 */
export function readFigure(text: string, options: ReadOptions): Result<ReadFigure, FigureFault> {
  const tidy = withoutPrimes(tidyText(text));
  return readParts(tidy, options) ?? readOne(tidy, options);
}

function readOne(tidy: string, { unit: own, decimalComma = false }: ReadOptions): Result<ReadFigure, FigureFault> {
  const [, written, symbol = ''] = shape.exec(tidy) ?? [];
  if (written === undefined) return failed({ kind: 'not-a-figure' });
  const unit = readUnit(symbol.trim(), tidy.length, own);
  // What goes on behind the number is a rule, and has the point.
  if (!unit.ok && unit.fault.kind === 'not-a-figure') return unit;
  const amount = readNumber(written, decimalComma);
  if (!amount.ok) return amount;
  return unit.ok ? inUnit(amount.value, unit.value, symbol === '' ? 'bare' : 'with unit') : unit;
}

function inUnit(amount: number, unit: Unit, written: ReadFigure['written']): Result<ReadFigure, FigureFault> {
  const value = toBase(amount, unit);
  return Number.isFinite(value) ? ok({ value, unit, written }) : failed({ kind: 'not-a-figure' });
}

function readUnit(symbol: string, end: number, otherwise: string): Result<Unit, FigureFault> {
  const called = symbol === '' ? otherwise : stepOf(unitCalled(symbol), symbol, otherwise);
  const unit = called === undefined ? undefined : findUnit(called);
  if (unit) return ok(unit);
  if (!/^[A-Za-z%]\w*$/.test(symbol)) return failed({ kind: 'not-a-figure' });
  return failed({ kind: 'unknown-unit', unit: symbol, from: end - symbol.length, to: end });
}

/** On a line of a step, `4 F` is a step; where `degF` is written out it stays a reading. */
function stepOf(called: string | undefined, symbol: string, otherwise: string): string | undefined {
  const isStep = otherwise === 'K' || otherwise === 'F_deg';
  return isStep ? ({ F: 'F_deg', C: 'K' }[symbol] ?? called) : called;
}

const fractions: Readonly<Record<string, string>> = {
  '\u00bd': '1/2',
  '\u00bc': '1/4',
  '\u00be': '3/4',
  '\u215b': '1/8',
  '\u215c': '3/8',
  '\u215d': '5/8',
  '\u215e': '7/8',
};

/** Replaces characters that mean the same on a builder's keyboard: °C, m², µmol, `fl oz`, ½, the long minus, hard spaces. */
export function tidyText(text: string): string {
  return joinUnitWords(
    text
      .trim()
      .replaceAll(/[\u00a0\u2007\u2009\u202f]/g, ' ')
      .replaceAll(/[\u2018\u2019\u2032]/g, "'")
      .replaceAll(/(\d?)([\u00bc-\u00be\u215b-\u215e])/g, (_, whole: string, part: string) =>
        [whole, fractions[part]].filter((each) => each !== '').join(' '),
      )
      .replaceAll('\u2212', '-')
      .replaceAll('\u00b2', '2')
      .replaceAll('\u00b3', '3')
      .replaceAll(/[\u00b5\u03bc]/g, 'u')
      .replaceAll(/\u00b0\s*([CF])/g, 'deg$1')
      .replaceAll(/(\d\s*)l\b/g, '$1L')
      .replaceAll(/(\d\s*)ml\b/g, '$1mL'),
  );
}

/** Primes behind a number are feet and inches; three digits right behind one are thousands: `1'250`. */
export function withoutPrimes(text: string): string {
  return text
    .replaceAll(/''|[\u201c\u201d\u2033]/g, '"')
    .replaceAll(/(?<=\d)\s*"/g, ' in ')
    .replaceAll(/(?<=\d)\s*'(?!\d{3}(?!\d))/g, ' ft ')
    .trim();
}
