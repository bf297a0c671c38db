import { describe, expect, test } from 'vitest';
import { restsOn, unsureAmong } from '#shared-calc/bench/rests-on.ts';
import { markWords, saySource, sayUnsure } from '#shared-calc/bench/source-words.ts';
import { demoOnce } from '#tests/demo-bench.ts';

describe('markWords', () => {
  test('a figure without a mark says so', () => {
    expect(([undefined, 'memory', 'practice', 'measured'] as const).map(markWords)).toEqual([
      'no source given',
      'from memory',
      'common practice',
      'measured by us',
    ]);
  });
});

describe('saySource', () => {
  test('with the day, the supplier or the publication where there is one', () => {
    expect(saySource({ source: 'measured', sourceNote: '2027-03-08, watch of T07' })).toBe(
      'measured by us: 2027-03-08, watch of T07',
    );
    expect(saySource({ source: 'memory' })).toBe('from memory, to be checked');
    expect(saySource({})).toBe('no source given');
  });
});

describe('sayUnsure', () => {
  const bench = demoOnce({ sizes: ['T07'], job: { soil_rise: '60 mm' } });

  test('a check names what it has from memory, its own limit too, and what was typed for the job', () => {
    expect(sayUnsure(unsureAmong(restsOn(bench, 'T07', 'slope_holds')), 'slope_holds')).toEqual([
      'From memory: its own limit.',
      'Typed for the whole job: Rise to the back.',
    ]);
  });

  test('a check on what can be looked up names nothing', () => {
    expect(sayUnsure(unsureAmong(restsOn(bench, 'T07', 'upturn_hidden')), 'upturn_hidden')).toEqual([]);
  });
});
