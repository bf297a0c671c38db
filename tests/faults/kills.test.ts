import { expect, test } from 'vitest';
import { killWriters } from '#tests/faults/kill-writers.ts';

test('whatever was told as written is there after the program was killed ten times', async () => {
  expect(await killWriters(10)).toBeGreaterThan(10);
});
