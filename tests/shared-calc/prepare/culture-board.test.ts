import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cultureBoard, type CultureBoard, type CultureWish } from '#shared-calc/prepare/culture-board.ts';
import { animalsFor, type CultureDemand } from '#shared-calc/prepare/culture-demands.ts';
import { growthRate } from '#shared-calc/prepare/growth-rate.ts';
import type { TubFacts } from '#shared-calc/prepare/standing-tub.ts';
import { animalsOn, dayNumber, mayTakeOn, takeFrom, tubStock } from '#shared-calc/prepare/tub-stock.ts';
import { foundersFor, tubWays } from '#shared-calc/prepare/tub-ways.ts';
import type { CultureKind } from '#shared-calc/records/records.ts';
import { chanceOfBreeding } from '#shared-calc/trade/cultures/both-sexes-chance.ts';
import { demoBench, demoRecords } from '#tests/demo-bench.ts';
import { dayAt } from './count-days.ts';

const records = demoRecords();

function kindOf(id: string): CultureKind {
  const kind = records.cultureKind.get(id);
  if (!kind) throw new Error(`no culture ${id}`);
  return kind;
}

describe('foundersFor', () => {
  test.each([
    ['C1', 1250, 3],
    ['C2', 1000, 11],
    ['C3', 100, 3],
    ['C4', 60, 11],
  ])('%s starts from a split of %d, or a new line of %d', (id, split, fresh) => {
    expect(tubWays.map((way) => foundersFor(kindOf(id), way))).toEqual([
      { ok: true, value: split },
      { ok: true, value: fresh },
    ]);
  });

  test('a new line of two sexes is 99 % sure of both, and one fewer is not', () => {
    expect([chanceOfBreeding(11, 0.5, 0.8) >= 0.99, chanceOfBreeding(10, 0.5, 0.8) >= 0.99]).toEqual([true, false]);
  });
});

const FIRST = '2027-06-01';
const kinds = fc.constantFrom('C1', 'C2', 'C3', 'C4').map(kindOf);

interface Board {
  readonly kind: CultureKind;
  readonly demands: readonly CultureDemand[];
  readonly tubs: readonly TubFacts[];
}

/** Claims of up to three harvests of a tub, over a season, and tubs that stand. */
const boards: fc.Arbitrary<Board> = kinds.chain((kind) =>
  fc.record({
    kind: fc.constant(kind),
    demands: fc.array(
      fc.record({
        date: fc.integer({ min: 0, max: 100 }).map((at) => dayAt(FIRST, at)),
        animals: fc.integer({ min: 0, max: Math.round(kind.yield * 2.5) }),
      }),
      { minLength: 1, maxLength: 7 },
    ),
    tubs: fc.array(
      fc
        .record({ at: fc.integer({ min: -300, max: -1 }), founders: fc.integer({ min: 10, max: kind.founders * 2 }) })
        .map(({ at, founders }) => ({ id: `K${at}`, startedOn: dayAt(FIRST, at), founders })),
      { maxLength: 2 },
    ),
  }),
);

function worked({ kind, demands, tubs }: Board, more: Partial<CultureWish> = {}): CultureBoard {
  const inOrder = tubs.toSorted((one, other) => (one.startedOn < other.startedOn ? -1 : 1));
  const found = cultureBoard({ kind, demands, tubs: inOrder, on: '2026-06-01', ...more });
  if (!found.ok) throw new Error(found.fault);
  return found.value;
}

/** Whether tubs that stand, started on these days, meet all claims by themselves. */
function meets(board: Board, starts: readonly string[], founders: number): boolean {
  const added = starts.map((startedOn, at) => ({ id: `N${at}`, startedOn, founders }));
  return worked({ ...board, tubs: [...board.tubs, ...added] }).tubs === 0;
}

describe('cultureBoard', () => {
  test('every claim is met, by harvests that leave the breeding stock, none twice within a refill', () => {
    fc.assert(
      fc.property(boards, (board) => {
        const found = worked(board);
        const { kind } = board;
        const tubs = [
          ...found.standing.map(({ tub, stock }) => ({ tub, stock })),
          ...found.starts.map((startedOn, at) => ({
            tub: `new ${at + 1}`,
            stock: tubStock(kind, kind.ratePerDay ?? 0, { startedOn, founders: found.founders }),
          })),
        ];
        for (const { short } of found.served) expect(short).toBeLessThan(1e-9);
        for (const { tub, stock: fresh } of tubs) {
          let stock = fresh;
          if (!stock) throw new Error('no stock');
          for (const { claim, from } of found.served) {
            const given = from.find((each) => each.tub === tub)?.animals;
            if (given === undefined) continue;
            const share = kind.harvestShare * animalsOn(stock, claim.day);
            expect(given).toBeLessThanOrEqual(share + 1e-6);
            expect(claim.day - stock.started).toBeGreaterThanOrEqual(kind.firstHarvestDays);
            const may = mayTakeOn(stock, claim.day);
            expect(given).toBeLessThanOrEqual(may + 1e-6);
            stock = takeFrom(stock, claim.day, kind.taken === 'floated' ? may : given);
            const recent = stock.taken.filter(({ day }) => day > claim.day - kind.harvestEveryDays);
            const sum = recent.reduce((total, { animals }) => total + animals, 0);
            expect(sum).toBeLessThanOrEqual(kind.harvestShare * (animalsOn(stock, claim.day) + sum) + 1e-6);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  test('claims of one day are their sum, in whatever order they are written', () => {
    fc.assert(
      fc.property(boards, ({ demands, ...board }) => {
        const halves = demands.flatMap(({ date, animals }) => [
          { date, animals: Math.floor(animals / 2) },
          { date, animals: animals - Math.floor(animals / 2) },
        ]);
        const starts = (some: readonly CultureDemand[]) => worked({ ...board, demands: some }).starts;
        expect(starts(halves.toReversed())).toEqual(starts(demands));
      }),
      { numRuns: 40 },
    );
  });

  // Asking less earlier can need more: tubs started for a claim are older, and give more, at the next.
  test('asking less on the last day never needs more tubs, and a standing tub never more new ones', () => {
    fc.assert(
      fc.property(boards, (board) => {
        const last = board.demands
          .map(({ date }) => date)
          .toSorted()
          .at(-1);
        const less = board.demands.map((each) =>
          each.date === last ? { ...each, animals: Math.floor(each.animals / 2) } : each,
        );
        const now = worked(board).tubs;
        expect(worked({ ...board, demands: less }).tubs).toBeLessThanOrEqual(now);
        expect(now).toBeLessThanOrEqual(worked({ ...board, tubs: [] }).tubs);
      }),
      { numRuns: 60 },
    );
  });

  test('all claims and tubs n days later: all starts n days later', () => {
    fc.assert(
      fc.property(boards, fc.integer({ min: 1, max: 200 }), ({ kind, demands, tubs }, days) => {
        const later = {
          kind,
          demands: demands.map((each) => ({ ...each, date: dayAt(each.date, days) })),
          tubs: tubs.map((each) => ({ ...each, startedOn: dayAt(each.startedOn, days) })),
        };
        const { starts } = worked({ kind, demands, tubs });
        expect(worked(later).starts).toEqual(starts.map((start) => dayAt(start, days)));
      }),
      { numRuns: 40 },
    );
  });

  test('each start is the latest: a day later some claim falls short', () => {
    fc.assert(
      fc.property(boards, (any) => {
        const board = { ...any, tubs: [] };
        const { starts, founders } = worked(board);
        expect(meets(board, starts, founders)).toBe(true);
        for (const [at, start] of starts.entries()) {
          expect(meets(board, starts.with(at, dayAt(start, 1)), founders)).toBe(false);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('warmer within what a kind stands there are never fewer animals', () => {
    fc.assert(
      fc.property(kinds, fc.nat({ max: 400 }), fc.double({ noNaN: true, min: 0, max: 1 }), (kind, days, part) => {
        const animals = (degC: number) => {
          const rate = growthRate(kind, degC);
          return rate
            ? animalsOn(
                tubStock(kind, rate.perDay, { startedOn: FIRST, founders: kind.founders }),
                dayNumber(FIRST) + days,
              )
            : Number.NaN;
        };
        const middle = kind.lowestC + part * (kind.highestC - kind.lowestC);
        expect(animals(kind.lowestC)).toBeLessThanOrEqual(animals(middle) + 1e-6);
        expect(animals(middle)).toBeLessThanOrEqual(animals(kind.highestC) + 1e-6);
      }),
    );
  });

  test('a spare tub serves nobody and counts as spare; one kept for a job serves that job alone', () => {
    const kind = kindOf('C1');
    const demands = [{ job: 'J02', date: '2027-06-28', animals: 1000 }];
    const tub = { id: 'K1', startedOn: '2027-01-01', founders: 1250 };
    const found = (more: Partial<TubFacts>) => {
      const { tubs, spare } = worked({ kind, demands, tubs: [{ ...tub, ...more }] });
      return [tubs, spare];
    };
    expect([found({}), found({ spare: true }), found({ keptFor: 'J02' }), found({ keptFor: 'J03' })]).toEqual([
      [0, 1],
      [1, 0],
      [0, 1],
      [1, 1],
    ]);
  });

  test('so many animals that no workshop has the tubs are refused', () => {
    const demands = [{ date: '2027-06-28', animals: 1_000_000 }];
    expect(cultureBoard({ kind: kindOf('C4'), demands, on: '2027-01-01' })).toEqual({
      ok: false,
      fault: 'That takes more than 500 tubs of Powdery dry-tolerant isopod: spread the builds, or buy the animals.',
    });
  });

  test('outside what the kind stands its growth is not known', () => {
    const demands = [{ date: '2027-06-28', animals: 100 }];
    expect(cultureBoard({ kind: kindOf('C1'), demands, degC: 15, on: '2027-01-01' })).toEqual({
      ok: false,
      fault: 'White springtail at 15 degC: growth is known from 18 to 24 degC alone; count the tub.',
    });
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
