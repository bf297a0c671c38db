import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { killOverTime, killTotal, type CoreReading } from '#shared-calc/trade/heat/kill-total.ts';

const moist = { reference: 82, step: 10 };
const log: readonly CoreReading[] = [
  [0, 60],
  [5, 70],
  [10, 80],
  [15, 82],
  [35, 82],
  [45, 60],
];
const readings = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 20, max: 125 })), { minLength: 2, maxLength: 12 })
  .map(climb);

describe('killTotal', () => {
  // Worked by hand from the definition of F, integrated along straight legs.
  test('a leaf batch that goes to 82 degC and is held 20 min is worth 27.32 min at 82', () => {
    expect(killTotal(log, moist)).toBeCloseTo(27.32, 2);
  });

  test('averaging the rates would have said 31.02, the unsafe side', () => {
    const rates = log.map(([, degC]) => 10 ** ((degC - 82) / 10));
    const trapezium = log
      .slice(1)
      .reduce(
        (sum, [minute], at) => sum + ((minute - (log[at]?.[0] ?? 0)) * ((rates[at] ?? 0) + (rates[at + 1] ?? 0))) / 2,
        0,
      );
    expect(trapezium).toBeCloseTo(31.02, 2);
  });

  test('fifteen level minutes at the reference are fifteen', () => {
    const level: readonly CoreReading[] = [
      [0, 82],
      [15, 82],
    ];
    expect(killTotal(level, moist)).toBeCloseTo(15, 12);
  });

  test.each<{ as: string; of: readonly CoreReading[]; step?: number; says: string }>([
    {
      as: 'times that stand still',
      of: [
        [0, 60],
        [5, 70],
        [5, 80],
      ],
      says: 'Times must rise: 5 min comes after 5 min.',
    },
    {
      as: 'times that go back',
      of: [
        [0, 60],
        [5, 70],
        [4, 80],
      ],
      says: 'Times must rise: 4 min comes after 5 min.',
    },
    {
      as: 'a time that is no number',
      of: [
        [0, 60],
        [Number.NaN, 70],
      ],
      says: 'Times must rise: NaN min comes after 0 min.',
    },
    { as: 'a single reading', of: [[0, 60]], says: 'A log needs two readings or more.' },
    {
      as: 'a step of zero',
      of: log,
      step: 0,
      says: 'The ten-fold step (z) must be above zero; moist spores have about 10 K.',
    },
  ])('refuses $as', ({ of, step, says }) => {
    expect(killTotal(of, { reference: 82, step: step ?? 10 })).toEqual({ refused: says });
  });

  test('splitting a straight leg changes nothing', () => {
    fc.assert(
      fc.property(readings, fc.nat(), fc.integer({ min: 1, max: 99 }), (of, pick, percent) => {
        const whole = Number(killTotal(of, moist));
        expect(Number(killTotal(splitLeg(of, pick % (of.length - 1), percent / 100), moist)) / whole).toBeCloseTo(1, 9);
      }),
    );
  });

  test('raising a reading never lowers the kill', () => {
    fc.assert(
      fc.property(readings, fc.nat(), fc.integer({ min: 0, max: 20 }), (of, pick, warmer) => {
        const raised = of.map(([minute, degC], at): CoreReading => [
          minute,
          at === pick % of.length ? degC + warmer : degC,
        ]);
        expect(Number(killTotal(raised, moist))).toBeGreaterThanOrEqual(Number(killTotal(of, moist)) * (1 - 1e-12));
      }),
    );
  });
});

describe('killOverTime', () => {
  test('it starts at nothing, never falls, and ends at the total', () => {
    fc.assert(
      fc.property(readings, (of) => {
        const grown = killOverTime(of, moist);
        const figures = 'refused' in grown ? [] : grown;
        expect(figures).toEqual(figures.toSorted((left, right) => left - right));
        expect([figures[0], figures.at(-1)]).toEqual([0, killTotal(of, moist)]);
      }),
    );
  });
});

function climb(steps: readonly (readonly [wait: number, degC: number])[]): readonly CoreReading[] {
  let minute = 0;
  return steps.map(([wait, degC]) => [(minute += wait), degC]);
}

function splitLeg(of: readonly CoreReading[], at: number, share: number): readonly CoreReading[] {
  const [from, to] = [of[at] ?? [0, 0], of[at + 1] ?? [0, 0]];
  const between: CoreReading = [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
  return [...of.slice(0, at + 1), between, ...of.slice(at + 1)];
}
