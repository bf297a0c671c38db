import { failed, ok, type Result } from '#shared-calc/result.ts';
import { findUnit, toBase, type Unit } from './unit.ts';

export interface ReadOptions {
  /** The unit of a bare number: the line's own. */
  readonly unit: string;
  readonly decimalComma?: boolean;
}

export type FigureFault =
  | { readonly kind: 'not-a-figure' }
  | { readonly kind: 'unknown-unit'; readonly unit: string; readonly from: number; readonly to: number }
  | { readonly kind: 'two-readings'; readonly text: string };

export interface ReadFigure {
  /** In coherent base units. */
  readonly value: number;
  readonly unit: Unit;
}

const numberForms = String.raw`(?:\d+ +\d+\/\d+|\d+\/\d+|[\d.,]*\d(?:[eE][+-]?\d+)?|\d+\.)`;
const shape = new RegExp(String.raw`^([+-]?)\s*(${numberForms})\s*(\D.*)?$`);

/**
 * Parses what a builder types as a figure: `40`, `40 mm`, `1 1/2 in`, `12,5 mm` (decimal comma set), `12 %`. Thousands
 * separators are allowed (`1,288.88`). A bare number gets `unit`. Fails with `not-a-figure` for a rule, and for a
 * number too large to work with.
 */
export function readFigure(text: string, options: ReadOptions): Result<ReadFigure, FigureFault> {
  const tidy = tidyText(text);
  const [, sign, written, symbol = ''] = shape.exec(tidy) ?? [];
  if (written === undefined) return failed({ kind: 'not-a-figure' });
  const amount = readNumber(written, options.decimalComma ?? false);
  if (amount === 'two-readings') return failed({ kind: 'two-readings', text: written });
  if (amount === undefined) return failed({ kind: 'not-a-figure' });
  const unit = readUnit(symbol.trim(), tidy.length, options.unit);
  if (!unit.ok) return unit;
  const value = toBase(sign === '-' ? -amount : amount, unit.value);
  return Number.isFinite(value) ? ok({ value, unit: unit.value }) : failed({ kind: 'not-a-figure' });
}

function readUnit(symbol: string, end: number, otherwise: string): Result<Unit, FigureFault> {
  const unit = findUnit(symbol === '' ? otherwise : symbol);
  if (unit) return ok(unit);
  if (!/^[A-Za-z%]\w*$/.test(symbol)) return failed({ kind: 'not-a-figure' });
  return failed({ kind: 'unknown-unit', unit: symbol, from: end - symbol.length, to: end });
}

/** Replaces characters that mean the same on a builder's keyboard: °C, m², µmol, the long minus, hard spaces. */
export function tidyText(text: string): string {
  return text
    .trim()
    .replaceAll(/[\u00a0\u2007\u202f]/g, ' ')
    .replaceAll('\u2212', '-')
    .replaceAll('\u00b2', '2')
    .replaceAll('\u00b3', '3')
    .replaceAll(/[\u00b5\u03bc]/g, 'u')
    .replaceAll(/\u00b0\s*([CF])/g, 'deg$1')
    .replaceAll(/(\d\s*)l\b/g, '$1L')
    .replaceAll(/(\d\s*)ml\b/g, '$1mL');
}

function readNumber(written: string, comma: boolean): number | undefined | 'two-readings' {
  const fraction = /^(?:(\d+) +)?(\d+)\/(\d+)$/.exec(written);
  if (fraction) return readFraction(fraction);
  const [point, mark] = comma ? [',', '.'] : ['.', ','];
  const grouped = new RegExp(String.raw`^\d{1,3}(?:[${mark}]\d{3})+(?:[${point}]\d+)?$`);
  if (grouped.test(written)) {
    if (comma && !written.includes(',') && written.split('.').length === 2) return 'two-readings';
    return Number(written.replaceAll(mark, '').replace(point, '.'));
  }
  const plain = comma ? written.replace(',', '.') : written;
  return /^(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/.test(plain) ? Number(plain) : undefined;
}

function readFraction(parts: RegExpExecArray): number | undefined {
  const under = Number(parts[3]);
  return under === 0 ? undefined : Number(parts[1] ?? 0) + Number(parts[2]) / under;
}
