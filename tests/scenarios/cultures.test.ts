import { describe, expect, test } from 'vitest';
import { cultureBoard, type CultureBoard } from '#shared-calc/prepare/culture-board.ts';
import { animalsFor, type CultureDemand } from '#shared-calc/prepare/culture-demands.ts';
import { sayLateCultures } from '#shared-calc/prepare/say-cultures.ts';
import type { CultureKind } from '#shared-calc/records/records.ts';
import { demoBench, demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();

function kindOf(id: string): CultureKind {
  const kind = records.cultureKind.get(id);
  if (!kind) throw new Error(`no culture ${id}`);
  return kind;
}

interface Build {
  readonly date: string;
  readonly tank: string;
  readonly count: number;
}

function demandsOf(builds: readonly Build[], kind: string, job: Readonly<Record<string, string>> = {}) {
  return builds.map(({ date, tank, count }): CultureDemand => {
    const animals = animalsFor(demoBench({ sizes: [tank], job }, records), [tank], kindOf(kind));
    if (!animals.ok) throw new Error(JSON.stringify(animals.fault));
    return { date, animals: animals.value * count };
  });
}

function board(demands: readonly CultureDemand[], kind = 'C1', on = '2027-05-01'): CultureBoard {
  const found = cultureBoard({ kind: kindOf(kind), demands, on, portion: { animals: 2000, coins: 600 } });
  if (!found.ok) throw new Error(found.fault);
  return found.value;
}

function told({ demands, tubs, spare, startBy, founders }: CultureBoard) {
  return { demands, tubs, spare, startBy, founders };
}

const season: readonly Build[] = [
  { date: '2027-06-28', tank: 'T07', count: 2 },
  { date: '2027-07-05', tank: 'T03', count: 3 },
  { date: '2027-07-19', tank: 'T08', count: 1 },
];

describe('cultures over several builds', () => {
  test('two T07, three T03 and a T08: 2,130, 1,581 and 1,914 springtails from 2 tubs and a spare, start by 31 May', () => {
    expect(told(board(demandsOf(season, 'C1')))).toEqual({
      demands: [
        { date: '2027-06-28', animals: 2130 },
        { date: '2027-07-05', animals: 1581 },
        { date: '2027-07-19', animals: 1914 },
      ],
      tubs: 2,
      spare: 1,
      startBy: '2027-05-31',
      founders: 1250,
    });
  });

  test('slower springtails ask for half as many again: at 5 % a day 1,516 to the T07, and 3 tubs', () => {
    // 20000 / (1 + 1.5 e^1.05) = 3,783.24 a m2: x 0.4005 = 1,515.2, x 0.198 = 749.1, x 0.72 = 2,723.9, each up
    const slow = board(demandsOf(season, 'C1', { springtail_rate: '5 %/d' }));
    expect([slow.demands.map(({ animals }) => animals), slow.tubs]).toEqual([[3032, 2250, 2724], 3]);
  });

  test('isopods go by the starter animals of a build: 20, 30 and 10; one tub is picked for all three', () => {
    expect(told(board(demandsOf(season, 'C3'), 'C3'))).toEqual({
      demands: [
        { date: '2027-06-28', animals: 20 },
        { date: '2027-07-05', animals: 30 },
        { date: '2027-07-19', animals: 10 },
      ],
      tubs: 1,
      spare: 1,
      startBy: '2027-03-30',
      founders: 100,
    });
  });

  test('builds of one day share a harvest; a demand over one yield takes several tubs', () => {
    const sameDay = season.map((build) => ({ ...build, date: '2027-06-28' }));
    expect(told(board(demandsOf(sameDay, 'C1')))).toMatchObject({
      demands: [{ date: '2027-06-28', animals: 5625 }],
      tubs: 2,
      spare: 1,
      startBy: '2027-05-31',
    });
  });

  test('what cannot be ready is said with its day', () => {
    const late = board(demandsOf(season, 'C1'), 'C1', '2027-06-02');
    expect([late.late, sayLateCultures(late, { coins: (coins) => `${coins / 100} cr`, display: {} })]).toEqual([
      [{ date: '2027-06-28', short: 2130, readyOn: '2027-06-30', cups: 2, coins: 1200 }],
      [
        'White springtail for Monday 28 June: 2,130 short, a tub started today gives that on Wednesday 30 June. Instead: 2 cups, 12 cr.',
      ],
    ]);
  });

  test('1,400 small flies a week are 4 starts a week and 20 tubs on the shelf', () => {
    const found = cultureBoard({
      kind: kindOf('C1'),
      demands: [],
      flies: { kind: kindOf('C5'), aWeek: 1400 },
      on: '2027-05-01',
    });
    expect(found).toMatchObject({
      ok: true,
      value: { demands: [], tubs: 0, spare: 0, flyStarts: 4, flyTubs: 20, flyFirst: { tubs: 10, on: '2027-04-17' } },
    });
  });
});
