import { sameDimension } from '#shared-calc/quantity/dimension.ts';
import { readFigure } from '#shared-calc/quantity/read-figure.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { Arguments } from './read-arguments.ts';

/** The temperature of `--degC`; a bare number is in degC. `undefined` if absent. */
export function readDegC(given: Arguments): Result<number | undefined, string> {
  const text = given.text('degC');
  if (text === undefined) return ok(undefined);
  const figure = readFigure(text, { unit: 'degC' });
  const wanted = unitOf('degC');
  if (figure.ok && sameDimension(figure.value.unit.dimension, wanted.dimension)) {
    return ok(cleanNoise(fromBase(figure.value.value, wanted)));
  }
  return failed(`--degC ${text}: give a temperature, as "22 degC".`);
}
