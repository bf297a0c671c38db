import { plainNumberIn, type NumberFault } from './read-number.ts';
import type { Unit } from './unit.ts';

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
  /** The unit that was written, otherwise that of the line; of a figure in several parts the largest. */
  readonly unit: Unit;
  /** How it was written: a number alone, a number with its unit, or several parts: `2 ft 6 in`. */
  readonly written: 'bare' | 'with unit' | 'in parts';
}

/** A figure's text in the book's notation, with a point for the decimals; parts have no marks of thousands. */
export function plainFigureText(text: string, written: ReadFigure['written'], decimalComma: boolean): string {
  if (written !== 'in parts') return plainNumberIn(text, decimalComma);
  return decimalComma ? text.replaceAll(/(?<=\d),(?=\d)/g, '.') : text;
}
