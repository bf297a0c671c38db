import { readNumber, type NumberFault } from '#shared-calc/quantity/read-number.ts';
import { ok, type Result } from '#shared-calc/result.ts';

/** The decimal sign of a list, and whether that is known of it or only the habit of the workshop. */
export interface ListDecimal {
  readonly sign: '.' | ',';
  readonly isKnown: boolean;
}

/**
 * Parses a number of a list. Where the decimal sign is known, the other one before three digits is a mark of thousands;
 * where it is not, `1,250` is refused with both readings.
 */
export function readListNumber(text: string, { sign, isKnown }: ListDecimal): Result<number, NumberFault> {
  const read = readNumber(text, sign === ',');
  const isGroup = !read.ok && read.fault.kind === 'two-readings' && isKnown;
  return isGroup ? ok(Number(text.replaceAll(/[.,]/g, ''))) : read;
}

/** The one decimal sign with which every number can be read; `undefined` if both do, or neither. */
export function decimalOf(numbers: Iterable<string>): '.' | ',' | undefined {
  let point = 0;
  let comma = 0;
  for (const text of numbers) {
    const [withPoint, withComma] = [mayBe(text, false), mayBe(text, true)];
    if (withPoint && !withComma) point += 1;
    if (withComma && !withPoint) comma += 1;
  }
  if (point > 0 && comma === 0) return '.';
  return comma > 0 && point === 0 ? ',' : undefined;
}

function mayBe(text: string, decimalComma: boolean): boolean {
  const read = readNumber(text, decimalComma);
  return read.ok || read.fault.kind === 'two-readings';
}
