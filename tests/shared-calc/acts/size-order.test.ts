import { describe, expect, test } from 'vitest';
import { sizesOf } from '#shared-calc/jobs/job-sheet.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { done, refused } from './do-act.ts';

const demo = demoRecords();
const tanks = (records: Records) => sizesOf(records, 'J01').map(({ tank }) => tank);

describe('moveSize', () => {
  test.each([
    ['T07', 0, ['T07', 'T03', 'T08']],
    ['T08', 0, ['T08', 'T03', 'T07']],
    ['T03', 1, ['T07', 'T03', 'T08']],
    ['T03', 2, ['T07', 'T08', 'T03']],
    ['T03', 99, ['T07', 'T08', 'T03']],
    ['T07', 1, ['T03', 'T07', 'T08']],
  ])('%s to place %i', (column, to, after) => {
    expect(tanks(done(demo, 'moveSize', { job: 'J01', column, to }).records)).toEqual(after);
  });

  test('moved there and back again and again, the sizes keep their order', () => {
    let records = demo;
    for (let turn = 0; turn < 40; turn += 1)
      records = done(records, 'moveSize', { job: 'J01', column: 'T08', to: turn % 2 }).records;
    expect(tanks(records)).toEqual(['T03', 'T08', 'T07']);
  });

  test('a size that is where it goes is left alone', () => {
    expect(done(demo, 'moveSize', { job: 'J01', column: 'T03', to: 0 }).records.size).toBe(demo.size);
  });

  test('a size that is not of the job is refused', () => {
    expect(refused(demo, 'moveSize', { job: 'J01', column: 'T99', to: 0 })).toMatch(/T99/);
  });
});
