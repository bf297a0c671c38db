import { expect, test } from 'vitest';
import { killWriters } from '#tests/faults/kill-writers.ts';

test(
  'whatever was told as written is there after the program was killed a hundred times',
  { timeout: 600_000 },
  async () => {
    expect(await killWriters(100)).toBeGreaterThan(100);
  },
);
