import { sameDimension } from '#shared-calc/quantity/dimension.ts';
import type { FigureFault } from '#shared-calc/quantity/figure-reading.ts';
import { readFigure } from '#shared-calc/quantity/read-figure.ts';
import { fromBase, unitOf, type Unit } from '#shared-calc/quantity/unit.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { EntryFault } from './entry-fault.ts';

/** A plain number in one unit. */
export interface Measure {
  /** The name at the start of a sentence: "Dam height". */
  readonly name: string;
  /** The unit the number is stored in. */
  readonly stored: string;
  /** The unit of a bare number; by default the stored one. */
  readonly shown?: string;
  /** Bounds in the stored unit. */
  readonly low?: number | undefined;
  readonly high?: number | undefined;
  readonly whole?: boolean;
  readonly mayBeEmpty?: boolean;
}

export interface MeasureReading {
  readonly decimalComma?: boolean;
}

/**
 * Parses what a person types into a number of the stored unit: `12 in` for an mm figure is 304.8. Empty text is
 * `undefined` if the field may be empty. Refuses another kind, a fraction of a whole thing, a figure out of bounds.
 */
export function readMeasure(
  text: string,
  measure: Measure,
  { decimalComma = false }: MeasureReading = {},
): Result<number | undefined, EntryFault> {
  const { name, stored, shown = stored } = measure;
  if (text.trim() === '') return measure.mayBeEmpty ? ok(undefined) : failed({ kind: 'empty', name, wants: 'figure' });
  const read = readFigure(text, { unit: shown, decimalComma });
  if (!read.ok) return failed(figureFault(read.fault, name, text.trim()));
  if (!goesWith(read.value.unit, unitOf(stored)))
    return failed({ kind: 'other-kind', name, text: text.trim(), unit: shown });
  const value = cleanNoise(fromBase(read.value.value, unitOf(stored)));
  const fault = outOfBounds(value, measure);
  return fault ? failed(fault) : ok(value);
}

/** A reading in degC does not fit a step in K, though both are temperatures. */
function goesWith(given: Unit, own: Unit): boolean {
  return sameDimension(given.dimension, own.dimension) && (given.zero === undefined) === (own.zero === undefined);
}

function outOfBounds(value: number, { name, low, high, whole, stored: unit }: Measure): EntryFault | undefined {
  if (whole === true && !Number.isInteger(value)) return { kind: 'not-whole', name, value, unit };
  if (low !== undefined && value < low) return { kind: 'too-low', name, value, low, unit };
  if (high !== undefined && value > high) return { kind: 'too-high', name, value, high, unit };
  return undefined;
}

function figureFault(fault: FigureFault, name: string, text: string): EntryFault {
  switch (fault.kind) {
    case 'not-a-figure':
      return { kind: 'not-a-figure', name, text };
    case 'unknown-unit':
      return { kind: 'unknown-unit', name, unit: fault.unit };
    case 'two-readings':
    case 'other-sign':
      return { ...fault, name };
  }
}
