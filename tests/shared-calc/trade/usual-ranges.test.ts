import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { tradeFunctions } from '#shared-calc/trade/all-functions.ts';

/* What each function takes: unit, usual range and what stands where it is left out, as the function book tells it. */

test('every argument takes its unit, and its usual range is the one that is written down', () => {
  const wanted = readFileSync(path.join(import.meta.dirname, 'usual-ranges.txt'), 'utf8')
    .trimEnd()
    .split('\n');
  const rows = tradeFunctions.flatMap(({ name, args }) =>
    args.map(({ name: argument, takes, low = '', high = '', otherwise }) => {
      const range = low === '' && high === '' ? '' : ` ${low}..${high}`;
      const left = otherwise === undefined ? '' : ` else ${otherwise}`;
      return `${name} ${argument}: ${[takes].flat().join(' or ')}${range}${left}`;
    }),
  );
  expect(rows).toEqual(wanted);
});
