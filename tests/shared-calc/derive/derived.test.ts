import { describe, expect, test } from 'vitest';
import { derive } from '#shared-calc/derive/derived.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { updatedEqualsFresh } from '#tests/derived-parts.ts';
import { libraryJob } from '#tests/shared-calc/jobs/demo-jobs.ts';

describe('derive', () => {
  test('after any run of changes an updated derivation says the same as a fresh one, part by part', () => {
    expect(() => updatedEqualsFresh(4)).not.toThrow();
  });

  test('a job that nothing of changed is the same object; its bench is, where only the Store changed; its columns are, where prices did', () => {
    const before = derive(libraryJob(), DEMO_DAY);
    const choice = before.update({ ...before.records, packChoice: new Map() });
    expect(choice.job('J02')).toBe(before.job('J02'));
    const stock = before.update({ ...before.records, move: new Map() });
    expect(stock.job('J02')?.bench).toBe(before.job('J02')?.bench);
    const prices = before.update({ ...before.records, packPrice: new Map() });
    expect(prices.job('J02')).not.toBe(before.job('J02'));
    expect(prices.job('J02')?.bench.input().columns).toEqual(before.job('J02')?.bench.input().columns);
    expect(prices.job('J02')?.bench.input().columns[0]).toBe(before.job('J02')?.bench.input().columns[0]);
  });
});
