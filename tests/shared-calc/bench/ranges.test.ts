import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { onceBench } from '#shared-calc/bench/once-bench.ts';
import { openBench, type Bench } from '#shared-calc/bench/open-bench.ts';
import { checksOf } from '#shared-calc/bench/checks.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { sayRange } from '#shared-calc/words/say-range.ts';
import { demoColumn, demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();

/** A small recipe: two guesses, the lines that depend on them, a need and checks. */
const recipe = [
  {
    name: 'loss',
    role: 'given',
    unit: 'mL/d',
    text: '40 mL/d',
    least: 20,
    most: 80,
    cases: { dry: 'most', wet: 'least' },
  },
  { name: 'warmth', role: 'given', unit: 'K', text: '4 K', least: 2, most: 6, cases: { dry: 'most' } },
  { name: 'mist', role: 'given', unit: 'mL/d', text: '60 mL/d' },
  { name: 'hottest', role: 'worked', unit: 'degC', text: '22 degC + warmth' },
  { name: 'spare', role: 'worked', unit: 'mL/d', text: 'mist - loss' },
  { name: 'drain_time', role: 'worked', unit: 'd', text: '1 L / spare' },
  { name: 'water_need', role: 'need', unit: 'L', text: 'loss * 30 d' },
  { name: 'after_need', role: 'worked', unit: 'L', text: 'water_need * 2' },
  {
    name: 'cool',
    role: 'check',
    unit: 'yes_no',
    text: 'hottest <= 27 degC',
    says: '{hottest} is too hot.',
    level: 'stop',
    decides: 'Vet',
  },
  {
    name: 'wet',
    role: 'check',
    unit: 'yes_no',
    text: 'mist >= loss',
    says: 'Misting gives {mist}, {loss} is lost.',
    level: 'advice',
  },
  { name: 'dry', role: 'check', unit: 'yes_no', text: 'loss >= 50 mL/d', says: 'Damp.', level: 'advice' },
] as const;

function linesOf(changed: Readonly<Record<string, Partial<Line>>> = {}): readonly Line[] {
  return recipe.map((each, at) => ({
    id: `X.${each.name}`,
    recipe: 'X',
    order: String(at + 1)
      .padStart(2, '0')
      .replace(/0$/, '0a'),
    section: 'Air',
    note: '',
    shownFirst: true,
    inset: false,
    perJob: false,
    ...each,
    ...changed[each.name],
  }));
}

function benchOf(locals: Readonly<Record<string, string>> = {}, lines = linesOf(), open = onceBench): Bench {
  return open({ lines, columns: [demoColumn(records, 'T07', locals)], job: new Map(), isOldPrice: () => false });
}

function rangeOf(bench: Bench, line: string) {
  const { range } = bench.box('T07', line);
  if (range === undefined || range === 'not known') return range;
  const scale = line === 'hottest' || line === 'warmth' ? 1 : 86_400e6;
  return [range.from * scale, range.to * scale, range.fromBy, range.toBy].map((each) =>
    typeof each === 'number' ? Number(each.toPrecision(10)) : each,
  );
}

describe('the range of a figure', () => {
  const bench = benchOf();

  test('runs over each guess at its ends, and names the guess that gives each', () => {
    expect(rangeOf(bench, 'loss')).toEqual([20, 80, 'loss least', 'loss most']);
    expect(rangeOf(bench, 'spare')).toEqual([-20, 40, 'loss most', 'loss least']);
    expect(rangeOf(bench, 'hottest')).toEqual([24, 28, 'warmth least', 'warmth most']);
  });

  test('no guess, no range: what hangs on none has none, nor has a need or what reads it', () => {
    expect(['mist', 'water_need', 'after_need'].map((line) => rangeOf(bench, line))).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });

  test('a case goes part of the way of each of its guesses; with one guess left it is not asked', () => {
    const names = (of: Bench) => of.ranges('T07').probes.map(({ name }) => name);
    const dry = bench.ranges('T07').probes.find(({ name }) => name === 'dry');
    expect(names(bench)).toEqual(['loss least', 'loss most', 'warmth least', 'warmth most', 'dry']);
    expect(dry?.at.get('loss')).toBeCloseTo((40 + 0.7 * 40) / 86_400e6, 18);
    expect(dry?.at.get('warmth')).toBeCloseTo(4 + 0.7 * 2, 12);
    expect(names(benchOf({ warmth: '5 K' }))).toEqual(['loss least', 'loss most']);
  });

  test('a plain figure written over a guess is a decision and has no range; brackets bring their own', () => {
    expect(rangeOf(benchOf({ loss: '50 mL/d' }), 'spare')).toBeUndefined();
    expect(rangeOf(benchOf({ loss: '50 mL/d (45 to 55)' }), 'spare')).toEqual([5, 15, 'loss most', 'loss least']);
    expect(rangeOf(benchOf({ loss: 'mist / 2' }), 'spare')).toBeUndefined();
  });

  test('where a probe has no answer the likely figure stays and its range is not known', () => {
    const at60 = benchOf({ loss: '40 mL/d (20 to 60)' });
    expect(at60.box('T07', 'drain_time').value).toBeCloseTo(50 * 86_400, 3);
    expect(rangeOf(at60, 'drain_time')).toBe('not known');
    expect(sayRange(at60, 'T07', 'drain_time', plainDisplay)?.range).toBe(
      'Range not known: it has no answer at one end of a guess.',
    );
  });

  test('both ways of working say the same, also after an edit', () => {
    const live = openBench(benchOf().input());
    const next = { ...live.input(), columns: [demoColumn(records, 'T07', { loss: '30 mL/d (25 to 100)' })] };
    const both = (line: string) => [live, onceBench(live.input())].map((each) => each.box('T07', line).range);
    for (const { name } of recipe) expect([name, both(name)[0]]).toEqual([name, both(name)[1]]);
    live.update(next);
    for (const { name } of recipe) expect([name, both(name)[0]]).toEqual([name, both(name)[1]]);
    expect(rangeOf(live, 'spare')).toEqual([-40, 35, 'loss most', 'loss least']);
    live.close();
  });

  test('an edit of one size leaves the guesses of another as they were worked', () => {
    const columns = ['T03', 'T07'].map((tank) => demoColumn(records, tank));
    const live = openBench({ ...benchOf().input(), columns });
    const [other, own] = [live.ranges('T03'), live.ranges('T07')];
    const edited = [
      columns[0] ?? demoColumn(records, 'T03'),
      demoColumn(records, 'T07', { loss: '30 mL/d (25 to 100)' }),
    ];
    live.update({ ...live.input(), columns: edited });
    expect(live.ranges('T03')).toBe(other);
    expect(live.ranges('T07').ranges.get('spare')).not.toEqual(own.ranges.get('spare'));
    live.update({ ...live.input(), lines: linesOf({ hottest: { use: 'hottestDay' } }) });
    expect(live.ranges('T03').ranges).toEqual(other.ranges);
    live.close();
  });

  test('it is explained by what to measure, and by what it does not cover', () => {
    expect(sayRange(bench, 'T07', 'hottest', plainDisplay)).toEqual({
      range: '26\u00a0°C (24 to 28).',
      ends: ['28 where warmth is 6\u00a0K: no reading has set it.'],
      limits:
        'Range: each guess alone at its worst, and several together part of the way (dry). All at once could be worse.',
    });
  });
});

describe('a check over guesses', () => {
  const bench = benchOf();
  const checkOf = (name: string, of = bench) =>
    checksOf(of, 'T07', plainDisplay).find(({ line }) => line.name === name);

  test('holds only if it holds at the bad end too', () => {
    expect(
      checksOf(bench, 'T07', plainDisplay).map(({ line, state, level, badIn }) => [line.name, state, level, badIn]),
    ).toEqual([
      ['cool', 'may not hold', 'watch', ['warmth most', 'dry']],
      ['wet', 'may not hold', 'watch', ['loss most', 'dry']],
      ['dry', 'fails', 'advice', []],
    ]);
  });

  test('says so with the figures of the bad end, and what to measure', () => {
    expect(checkOf('cool')?.says).toBe('28\u00a0degC is too hot. It may not: warmth at 6\u00a0K. Measure it.');
  });

  test('holds where every probe does, and fails at the likely whatever the probes say', () => {
    expect(checkOf('cool', benchOf({ warmth: '3 K (2 to 5)' }))?.state).toBe('holds');
    expect(checkOf('cool', benchOf({ warmth: '6 K (2 to 7)' }))).toMatchObject({
      state: 'fails',
      badIn: [],
      level: 'stop',
    });
    expect(checkOf('cool', benchOf({ warmth: '' }))).toMatchObject({ state: 'not known yet', badIn: [] });
  });

  test('is not asked where the range of a figure says it better', () => {
    const lines = linesOf({ hottest: { use: 'hottestDay' }, dry: { unlessRanged: 'hottestDay' } });
    expect(checkOf('dry', benchOf({}, lines))).toBeUndefined();
    expect(checkOf('dry', benchOf({ warmth: '4 K' }, lines))?.state).toBe('fails');
    expect(benchOf({}, lines).box('T07', 'dry').check?.state).toBe('not asked');
  });

  test('law: narrower guesses never widen a range or take a check that holds away', () => {
    const ends = fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 40, max: 200 }));
    fc.assert(
      fc.property(ends, ends, ([least, most], [otherLeast, otherMost]) => {
        const [low, high] = [Math.max(least, otherLeast), Math.min(most, otherMost)];
        const wide = benchOf({ loss: `40 mL/d (${least} to ${most})` });
        const narrow = benchOf({ loss: `40 mL/d (${low} to ${high})` });
        for (const line of ['loss', 'spare']) {
          const [w, n] = [wide, narrow].map((each) => {
            const { range, value } = each.box('T07', line);
            return typeof range === 'object' ? range : { from: Number(value), to: Number(value) };
          });
          if (!w || !n) throw new Error('no range');
          expect(w.from).toBeLessThanOrEqual(n.from);
          expect(n.to).toBeLessThanOrEqual(w.to);
        }
        expect([checkOf('wet', wide)?.state !== 'holds', checkOf('wet', narrow)?.state === 'holds']).toContain(true);
      }),
      { numRuns: 50 },
    );
  });
});
