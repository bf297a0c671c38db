import { describe, expect, test } from 'vitest';
import { linesOf } from '#shared-calc/recipe/lines-of.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { done, refused } from './do-act.ts';

const demo = demoRecords();
const names = (records: Records) => linesOf(records, 'H1').map(({ name }) => name);
const sectionOf = (records: Records, name: string) =>
  linesOf(records, 'H1').find((line) => line.name === name)?.section;

describe('placeLine', () => {
  test('a line comes before another and into its section, and all others stay as they were', () => {
    const { label, records } = done(demo, 'placeLine', { line: 'H1.litter', before: 'H1.drainage' });
    const now = names(records);
    expect([label, now[now.indexOf('litter') + 1], sectionOf(records, 'litter')]).toEqual([
      'litter depth moved',
      'drainage',
      sectionOf(demo, 'drainage'),
    ]);
    expect(now.filter((name) => name !== 'litter')).toEqual(names(demo).filter((name) => name !== 'litter'));
  });

  test('a line is put last', () => {
    const { records } = done(demo, 'placeLine', { line: 'H1.litter', before: null });
    expect(names(records).at(-1)).toBe('litter');
  });

  test('a line put before the one that follows it stays where it is', () => {
    const [first, second] = linesOf(demo, 'H1');
    expect(done(demo, 'placeLine', { line: first?.id ?? '', before: second?.id ?? '' }).records.line).toBe(demo.line);
  });

  test('a line is not put before one of another recipe', () => {
    expect(refused(demo, 'placeLine', { line: 'H1.litter', before: 'H2.drainage' })).toMatch(/H2\.drainage/);
  });
});
