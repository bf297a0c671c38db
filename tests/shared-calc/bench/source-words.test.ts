import { describe, expect, test } from 'vitest';
import { restsOn, unsureAmong } from '#shared-calc/bench/rests-on.ts';
import { checkWords, markWords, saySource, sayUnsure } from '#shared-calc/bench/source-words.ts';
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

describe('checkWords', () => {
  const shelf = (job: Readonly<Record<string, string>>) => {
    const bench = demoOnce({ sizes: ['T01'], job });
    return unsureAmong(restsOn(bench, 'T01', 'shelf_holds'));
  };

  test("a shelf that holds on the house's rating is not passed while nobody asked what it bears", () => {
    expect(checkWords('holds', shelf({}))).toBe('holds, place not asked');
    expect(sayUnsure(shelf({}), 'shelf_holds')).toContain(
      "Not asked at the place, the house's figure stands: Shelf rating.",
    );
  });

  test('once the rating is said for the job it holds', () => {
    expect(checkWords('holds', shelf({ shelf_rating: '80 kg' }))).toBe('holds');
  });

  test('one that fails is said as it is, asked or not', () => {
    expect(checkWords('fails', shelf({}))).toBe('fails');
  });
});
