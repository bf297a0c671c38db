import fc from 'fast-check';
import loadHighs from 'highs';
import { beforeAll, describe, expect, test } from 'vitest';
import { shoppingRun } from '#shared-calc/buy/shopping-run.ts';
import { packCases, randomRuns, type PackCase, type RandomRun } from '#tests/shared-calc/buy/random-runs.ts';

/** Whole shopping runs as one integer model, all materials at once: larger and more than the everyday tests try. */
describe('shoppingRun against a second solver', () => {
  let leastBySolver: (cases: readonly PackCase[]) => number = () => NaN;

  beforeAll(async () => {
    const highs = await loadHighs();
    leastBySolver = (cases) => {
      if (cases.length === 0) return 0;
      const solution = highs.solve(modelOf(cases), { mip_rel_gap: 0, mip_abs_gap: 0 });
      return solution.Status === 'Optimal' ? Math.round(solution.ObjectiveValue) : NaN;
    };
  });

  test.each([
    { says: 'one to three jobs', materials: 60, builds: 4, needTenths: 400, runs: 200 },
    { says: 'a hundred builds and more', materials: 60, builds: 60, needTenths: 2000, runs: 40 },
  ])(
    '$says: $runs runs cost the same in goods',
    ({ runs, ...most }) => {
      fc.assert(
        fc.property(randomRuns(most), (random) => {
          expect(goodsOf(random)).toBe(leastBySolver(packCases(random).filter(({ shortTenths }) => shortTenths > 0)));
        }),
        { numRuns: runs, seed: 11 },
      );
    },
    600_000,
  );
});

function goodsOf({ parts, prices, stock }: RandomRun): number {
  const run = shoppingRun(parts, { prices, stock });
  if (!run.ok) throw new Error(JSON.stringify(run.fault));
  return run.value.togetherCoins;
}

function modelOf(cases: readonly PackCase[]): string {
  const names = cases.map(({ packs }, at) => packs.map((_, of) => `x${at}_${of}`));
  const terms = (at: number, of: 'priceCoins' | 'tenths') =>
    (cases[at]?.packs ?? []).map((pack, nth) => `${pack[of]} ${names[at]?.[nth]}`).join(' + ');
  return [
    'Minimize',
    ` coins: ${cases.map((_, at) => terms(at, 'priceCoins')).join('\n + ')}`,
    'Subject To',
    ...cases.map(({ shortTenths }, at) => ` cover${at}: ${terms(at, 'tenths')} >= ${shortTenths}`),
    'General',
    ...names.map((each) => ` ${each.join(' ')}`),
    'End',
  ].join('\n');
}
