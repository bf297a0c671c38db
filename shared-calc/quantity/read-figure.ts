import { failed, ok, type Result } from '#shared-calc/result.ts';
import { readNumber, type NumberFault } from './read-number.ts';
import { findUnit, toBase, type Unit } from './unit.ts';

export interface ReadOptions {
  /** The unit of a bare number: the line's own. */
  readonly unit: string;
  readonly decimalComma?: boolean;
}

export type FigureFault =
  | NumberFault
  | { readonly kind: 'unknown-unit'; readonly unit: string; readonly from: number; readonly to: number };

export interface ReadFigure {
  /** In coherent base units. */
  readonly value: number;
  readonly unit: Unit;
}

const numberForms = String.raw`\d+ +\d+\/\d+|\d+\/\d+|[.,]*\d[\d.,]*(?:[ '][\d.,]*\d[\d.,]*)*(?:[eE][+-]?\d+)?`;
const shape = new RegExp(String.raw`^([+-]?\s*(?:${numberForms}))\s*(\D.*)?$`);

/**
 * Parses what a builder types as a figure: `40`, `40 mm`, `1 1/2 in`, `12,5 mm` (decimal comma set), `12 %`. A bare
 * number gets `unit`. Fails with `not-a-figure` for a rule, and for a number too large to work with.
 */
export function readFigure(text: string, options: ReadOptions): Result<ReadFigure, FigureFault> {
  const tidy = tidyText(text);
  const [, written, symbol = ''] = shape.exec(tidy) ?? [];
  if (written === undefined) return failed({ kind: 'not-a-figure' });
  const unit = readUnit(symbol.trim(), tidy.length, options.unit);
  // What goes on behind the number is a rule, and has the point.
  if (!unit.ok && unit.fault.kind === 'not-a-figure') return unit;
  const amount = readNumber(written, options.decimalComma ?? false);
  if (!amount.ok) return amount;
  if (!unit.ok) return unit;
  const value = toBase(amount.value, unit.value);
  return Number.isFinite(value) ? ok({ value, unit: unit.value }) : failed({ kind: 'not-a-figure' });
}

function readUnit(symbol: string, end: number, otherwise: string): Result<Unit, FigureFault> {
  const unit = findUnit(symbol === '' ? otherwise : symbol);
  if (unit) return ok(unit);
  if (!/^[A-Za-z%]\w*$/.test(symbol)) return failed({ kind: 'not-a-figure' });
  return failed({ kind: 'unknown-unit', unit: symbol, from: end - symbol.length, to: end });
}

/** Replaces characters that mean the same on a builder's keyboard: °C, m², µmol, `fl oz`, the long minus, hard spaces. */
export function tidyText(text: string): string {
  return text
    .trim()
    .replaceAll(/[\u00a0\u2007\u2009\u202f]/g, ' ')
    .replaceAll('\u2019', "'")
    .replaceAll(/(?<!\p{L})(fl oz|dry qt|F deg)\b/gu, (unit) => unit.replace(' ', '_'))
    .replaceAll('\u2212', '-')
    .replaceAll('\u00b2', '2')
    .replaceAll('\u00b3', '3')
    .replaceAll(/[\u00b5\u03bc]/g, 'u')
    .replaceAll(/\u00b0\s*([CF])/g, 'deg$1')
    .replaceAll(/(\d\s*)l\b/g, '$1L')
    .replaceAll(/(\d\s*)ml\b/g, '$1mL');
}
