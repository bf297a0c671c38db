import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solve } from 'yalps';
import { leastLanded, type LandedQuestion } from '#shared-calc/buy/least-landed.ts';
import { randomOffers } from './random-offers.ts';

const terms = new Map([
  ['near', { carriageCoins: 750, freeFromCoins: 9000 }],
  ['far', { carriageCoins: 900, freeFromCoins: 5000 }],
]);

function asked(near: number, far: number) {
  return [
    { supplier: 'near', coins: near },
    { supplier: 'far', coins: far },
  ];
}

describe('leastLanded', () => {
  test.each([
    {
      says: 'dearer goods that bring the order to free carriage land for less',
      choices: [asked(4300, 5000)],
      picks: [1],
      coins: 5000,
    },
    {
      says: 'one carriage is saved by buying both from one',
      choices: [asked(1000, 900), asked(1000, 1900)],
      picks: [0, 0],
      coins: 2750,
    },
    { says: 'on a tie it is the usual supplier', choices: [asked(1150, 1000)], picks: [0], coins: 1900 },
    { says: 'nothing to choose costs nothing', choices: [], picks: [], coins: 0 },
  ])('$says', ({ choices, picks, coins }) => {
    expect(leastLanded({ fixed: new Map(), choices, terms })).toEqual({ picks, coins, proven: true });
  });

  test('what is bought from a supplier anyway bears its carriage already', () => {
    const fixed = new Map([['far', 4500]]);
    expect(leastLanded({ fixed, choices: [asked(300, 500)], terms })).toMatchObject({ picks: [1], coins: 5000 });
  });

  test('300 runs of up to 8 materials land for what an integer solver finds', () => {
    const choices: number[] = [];
    fc.assert(
      fc.property(randomOffers(8), (question) => {
        const found = leastLanded(question);
        choices.push(question.choices.length);
        expect(found.proven).toBe(true);
        expect(found.coins).toBe(leastBySolver(question));
      }),
      { numRuns: 300, seed: 20_270_308 },
    );
    expect(Math.max(...choices)).toBe(8);
  });

  test('where the search is cut short it is the best that was found, and not proven', () => {
    const choices = [asked(900, 800), asked(700, 900), asked(500, 450)];
    const short = leastLanded({ fixed: new Map(), choices, terms, mostNodes: 1 });
    expect([short.proven, short.coins]).toEqual([false, 900 + 700 + 500 + 750]);
  });
});

/** One supplier a material; carriage of each that sells anything, unless its goods come to what travels free. */
function leastBySolver({ fixed, choices, terms: all }: LandedQuestion): number {
  const variables: Record<string, Record<string, number>> = {};
  const constraints: Record<string, { readonly min?: number; readonly max?: number; readonly equal?: number }> = {};
  for (const [at, some] of choices.entries()) {
    constraints[`one ${at}`] = { equal: 1 };
    for (const { supplier, coins } of some) {
      variables[`take ${at} ${supplier}`] = {
        coins,
        [`one ${at}`]: 1,
        [`used ${supplier}`]: 1,
        [`free ${supplier}`]: coins,
      };
    }
  }
  for (const [supplier, { carriageCoins, freeFromCoins = 1e7 }] of all) {
    const bought = fixed.get(supplier);
    variables[`pay ${supplier}`] = {
      coins: carriageCoins,
      [`used ${supplier}`]: -1000,
      [`free ${supplier}`]: 1e7,
      [`most ${supplier}`]: 1,
    };
    variables[`travels free ${supplier}`] = {
      coins: 0,
      [`used ${supplier}`]: -1000,
      [`free ${supplier}`]: -freeFromCoins,
      [`most ${supplier}`]: 1,
    };
    constraints[`used ${supplier}`] = { max: bought === undefined ? 0 : -1 };
    constraints[`free ${supplier}`] = { min: -(bought ?? 0) };
    constraints[`most ${supplier}`] = { max: 1 };
  }
  const goods = [...fixed.values()].reduce((sum, coins) => sum + coins, 0);
  const solution = solve(
    { direction: 'minimize', objective: 'coins', constraints, variables, binaries: true },
    { tolerance: 0, maxIterations: 1_000_000 },
  );
  return solution.status === 'optimal' ? Math.round(solution.result) + goods : Number.NaN;
}
