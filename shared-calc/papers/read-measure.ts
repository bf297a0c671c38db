import { kindOfUnit, sayKind } from '#shared-calc/quantity/kind.ts';
import { sameDimension } from '#shared-calc/quantity/dimension.ts';
import { readFigure, type FigureFault } from '#shared-calc/quantity/read-figure.ts';
import { fromBase, unitOf, type Unit } from '#shared-calc/quantity/unit.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';

/** A field of a record that holds a plain number of one unit. */
export interface Measure {
  /** As a sentence begins with it: "Dam height". */
  readonly name: string;
  /** The unit the record keeps it in. */
  readonly stored: string;
  /** The unit a bare number takes; the stored one where left out. */
  readonly shown?: string;
  /** Bounds in the stored unit. */
  readonly low?: number;
  readonly high?: number;
  readonly whole?: boolean;
  readonly mayBeEmpty?: boolean;
}

export interface MeasureReading {
  readonly decimalComma?: boolean;
}

/**
 * Reads what a builder writes in a field of a book as a number of its stored unit: `12 in` in an mm field is 304.8.
 * Empty text is `undefined` where the field may be empty. Refuses another kind, a part of a whole thing, a figure
 * out of bounds.
 */
export function readMeasure(
  text: string,
  measure: Measure,
  { decimalComma = false }: MeasureReading = {},
): Result<number | undefined, string> {
  const { name, stored, shown = stored } = measure;
  if (text.trim() === '') return measure.mayBeEmpty ? ok(undefined) : failed(`${name} needs a figure.`);
  const read = readFigure(text, { unit: shown, decimalComma });
  if (!read.ok) return failed(`${name}: ${sayFigureFault(read.fault, text)}`);
  if (!goesWith(read.value.unit, unitOf(stored))) return failed(sayMisfit(text, name, shown));
  const value = cleanNoise(fromBase(read.value.value, unitOf(stored)));
  const wrong = outOfBounds(value, measure);
  return wrong === undefined ? ok(value) : failed(wrong);
}

/** A reading of degC is no step of K, though both are temperatures. */
function goesWith(given: Unit, own: Unit): boolean {
  return sameDimension(given.dimension, own.dimension) && (given.zero === undefined) === (own.zero === undefined);
}

function sayMisfit(text: string, name: string, shown: string): string {
  const wanted = sayKind(kindOfUnit(shown));
  return `${name} is in ${shown}, a ${wanted}; "${text.trim()}" does not fit.`;
}

function outOfBounds(value: number, { name, low, high, whole, stored }: Measure): string | undefined {
  const unit = ['each', 'number', 'share'].includes(stored) ? '' : ` ${stored}`;
  const said = (bound: number) => (stored === 'share' ? `${cleanNoise(bound * 100)} %` : `${bound}${unit}`);
  if (whole === true && !Number.isInteger(value)) return `${name} is a whole number; ${said(value)} is not.`;
  if (low !== undefined && value < low) return `${name} is ${said(low)} or more; ${said(value)} is less.`;
  if (high !== undefined && value > high) return `${name} is ${said(high)} at most; ${said(value)} is more.`;
  return undefined;
}

function sayFigureFault(fault: FigureFault, text: string): string {
  switch (fault.kind) {
    case 'not-a-figure':
      return `"${text.trim()}" is not a figure.`;
    case 'unknown-unit':
      return `there is no unit called ${fault.unit}.`;
    case 'two-readings':
      return `"${fault.text}" can be read in two ways; leave the mark of the thousands out.`;
  }
}
