import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { ImportField } from './import-records.ts';
import { readMeasure, type Measure } from './read-measure.ts';
import { readYesNo } from './read-yes-no.ts';

type KeyOf<R, V> = { [K in keyof R]-?: V extends Exclude<R[K], undefined> ? K : never }[keyof R];

/** A field of words, as they are written. */
export function wordsField<R>(heading: string, key: KeyOf<R, string>): ImportField<R> {
  return { heading, put: (record, text) => ok({ ...record, [key]: text }) };
}

/** A field that holds a number of one unit; another unit of the kind may be written with it. */
export function measureField<R>(
  heading: string,
  key: KeyOf<R, number>,
  measure: Measure,
  decimalComma: boolean,
): ImportField<R> {
  return {
    heading,
    put: (record, text) => {
      const read = readMeasure(text, measure, { decimalComma });
      return read.ok ? ok({ ...record, [key]: read.value }) : failed(read.fault);
    },
  };
}

/** A field of yes or no. */
export function yesNoField<R>(heading: string, key: KeyOf<R, boolean>): ImportField<R> {
  return {
    heading,
    put: (record, text) => {
      const read = readYesNo(text);
      return read.ok ? ok({ ...record, [key]: read.value }) : failed(`${heading}: ${read.fault}`);
    },
  };
}

/** A field that is read in its own way. */
export function ownField<R, V>(
  heading: string,
  read: (text: string) => Result<V, string>,
  put: (record: R, value: V) => R,
): ImportField<R> {
  return {
    heading,
    put: (record, text) => {
      const value = read(text);
      return value.ok ? ok(put(record, value.value)) : failed(value.fault);
    },
  };
}
