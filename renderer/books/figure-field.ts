import { readMeasure, type Measure } from '#shared-calc/papers/read-measure.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { fromBase, toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { cleanNoise, writeFigure, writeNumber } from '#shared-calc/quantity/write-figure.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { unitWords } from '#shared-calc/quantity/unit-words.ts';
import type { Field, KeyOf } from './field.ts';

export interface FigureParts extends Measure {
  /** Behind the title; the shown unit where left out. */
  readonly unit?: string;
  readonly title?: string;
  readonly width?: number;
}

/** A number of one unit. It is shown as it was written, or rounded where another unit than the record's is shown. */
export function figureField<R>(key: KeyOf<R, number>, parts: FigureParts, display: Display): Field<R> {
  const {
    name,
    stored,
    shown = stored,
    title = name,
    unit = shown === 'each' ? '' : unitWords(shown, display.currency),
    width = 5.5,
  } = parts;
  const valueOf = (record: R) => {
    const value: unknown = record[key];
    return typeof value === 'number' ? value : undefined;
  };
  return {
    key,
    title,
    unit,
    look: 'figure',
    width,
    show: (record) => showAs(valueOf(record), { stored, shown, display }),
    entry: (record) => {
      const value = valueOf(record);
      return value === undefined ? '' : plain(inShown(value, stored, shown), display);
    },
    read: (text, record) => {
      const read = readMeasure(text, parts, display);
      return read.ok ? ok({ ...record, [key]: read.value }) : failed(read.fault);
    },
  };
}

interface Showing {
  readonly stored: string;
  readonly shown: string;
  readonly display: Display;
}

function showAs(value: number | undefined, { stored, shown, display }: Showing): string {
  if (value === undefined) return '';
  const own = inShown(value, stored, shown);
  const decimals = decimalsIn(own);
  if (decimals > 4) return writeFigure(toBase(value, unitOf(stored)), shown, display);
  return writeNumber(own, decimals, { decimalComma: display.decimalComma ?? false, group: shown !== 'mm' });
}

function inShown(value: number, stored: string, shown: string): number {
  return stored === shown ? value : cleanNoise(fromBase(toBase(value, unitOf(stored)), unitOf(shown)));
}

function decimalsIn(value: number): number {
  return String(value).split('.')[1]?.length ?? 0;
}

function plain(value: number, { decimalComma }: Display): string {
  return decimalComma ? String(value).replace('.', ',') : String(value);
}
