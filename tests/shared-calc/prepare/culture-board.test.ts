import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cultureBoard, foundersOf } from '#shared-calc/prepare/culture-board.ts';
import { animalsFor } from '#shared-calc/prepare/culture-demands.ts';
import type { CultureKind } from '#shared-calc/records/records.ts';
import { chanceOfBreeding } from '#shared-calc/trade/cultures/both-sexes-chance.ts';
import { demoBench, demoRecords } from '#tests/demo-bench.ts';
import { dayAt } from './count-days.ts';

const records = demoRecords();
const kinds = new Map(records.cultureKind);

function kindOf(id: string): CultureKind {
  const kind = kinds.get(id);
  if (!kind) throw new Error(`no culture ${id}`);
  return kind;
}

describe('foundersOf', () => {
  test.each([
    ['C1', 1250],
    ['C2', 11],
    ['C3', 100],
    ['C4', 11],
    ['C5', 50],
  ])('%s starts from %d: a split of females only, or 99 %% sure of both sexes', (id, founders) => {
    expect(foundersOf(kindOf(id))).toEqual({ ok: true, value: founders });
  });

  test('a new line of two sexes is 99 % sure of both, and one fewer is not', () => {
    expect([chanceOfBreeding(11, 0.5, 0.8) >= 0.99, chanceOfBreeding(10, 0.5, 0.8) >= 0.99]).toEqual([true, false]);
  });
});

describe('cultureBoard', () => {
  const demand = fc.record({
    date: fc.integer({ min: 0, max: 120 }).map((at) => dayAt('2027-06-01', at)),
    animals: fc.integer({ min: 0, max: 9000 }),
  });

  test('no tub is harvested twice within its refill, none before it is ripe, and all demands are met', () => {
    fc.assert(
      fc.property(fc.array(demand, { maxLength: 12 }), (demands) => {
        const kind = kindOf('C1');
        const found = cultureBoard({ kind, demands, on: '2027-01-01' });
        if (!found.ok) throw new Error(found.fault);
        const { harvests, tubStarts, tubs, spare, ...board } = found.value;
        for (const { date, animals } of board.demands) {
          expect(harvests.filter((each) => each.date === date).length * kind.yield).toBeGreaterThanOrEqual(animals);
        }
        for (const [at, start] of tubStarts.entries()) {
          const days = harvests.filter(({ tub }) => tub === at + 1).map(({ date }) => date);
          expect(days[0]).toBe(dayAt(start, kind.firstHarvestDays));
          expect(days.slice(1).every((day, before) => day >= dayAt(days[before] ?? '', kind.harvestEveryDays))).toBe(
            true,
          );
        }
        expect(spare).toBe(tubs === 0 ? 0 : Math.max(1, Math.ceil(tubs / 5)));
      }),
      { numRuns: 60 },
    );
  });

  test('one animal more never takes fewer tubs, and demands may be written in any order', () => {
    fc.assert(
      fc.property(fc.array(demand, { minLength: 1, maxLength: 8 }), (demands) => {
        const tubs = (some: typeof demands) => {
          const found = cultureBoard({ kind: kindOf('C1'), demands: some, on: '2027-01-01' });
          return found.ok ? found.value.tubs : Number.NaN;
        };
        const [first = { date: '2027-06-01', animals: 0 }, ...rest] = demands;
        expect(tubs([...rest, first])).toBe(tubs(demands));
        expect(tubs([{ ...first, animals: first.animals + 1 }, ...rest])).toBeGreaterThanOrEqual(tubs(demands));
      }),
      { numRuns: 60 },
    );
  });
});

describe('animalsFor', () => {
  test('a recipe without springtails says that it has no such line', () => {
    const bench = demoBench({ recipe: 'H3', sizes: ['T05'] }, records);
    expect(animalsFor(bench, ['T05'], kindOf('C1'))).toEqual({
      ok: false,
      fault: { kind: 'no-seed-line', culture: 'White springtail', use: 'springtailSeed' },
    });
    expect(animalsFor(bench, ['T05'], kindOf('C4'))).toEqual({ ok: true, value: 20 });
  });
});
