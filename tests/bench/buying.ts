import { solve } from 'yalps';
import { packMix } from '#shared-calc/trade/pack-mix.ts';
import { measure, ms, ratio, type Told } from './measure.ts';

const MATERIALS = 30;
const BUILDS = 100;

interface Case {
  readonly need: number;
  readonly packs: readonly { readonly id: string; readonly amount: number; readonly priceCoins: number }[];
}

/** A shopping run of 100 builds x 30 materials, least cost, against an integer solver on the same cases. */
export function benchBuying(): readonly Told[] {
  const cases = madeCases();
  const ours = measure({ times: 9 }, () => {
    for (const each of cases) packMix({ ...each, onHand: 0, keeps: true });
  });
  const theirs = measure({ times: 3, warm: 1 }, () => {
    for (const each of cases) solveCase(each);
  });
  const dearer = cases.filter((each) => costOf(each) > solveCase(each) + 1e-6).length;
  const what = `run of ${BUILDS} builds x ${MATERIALS} materials, ${dearer} dearer than the solver`;
  const factor = ratio(ours.median / theirs.median);
  return [{ what, took: ms(ours.median), floor: `integer solver ${ms(theirs.median)}`, ratio: factor, must: '50 ms' }];
}

function costOf(each: Case): number {
  const mix = packMix({ ...each, onHand: 0, keeps: true });
  return mix.ok ? mix.value.costCoins : Number.POSITIVE_INFINITY;
}

function madeCases(): readonly Case[] {
  let seed = 7;
  const next = (most: number) => {
    seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648;
    return seed % most;
  };
  return Array.from({ length: MATERIALS }, (_, at) => ({
    need: (BUILDS * (20 + next(400))) / 10 + at / 7,
    packs: [4, 10, 25, 45, 80].slice(0, 2 + (at % 4)).map((size) => ({
      id: `P${size}`,
      amount: size + next(3),
      priceCoins: Math.round(size * (90 - size / 4) + next(300)),
    })),
  }));
}

function solveCase({ need, packs }: Case): number {
  const variables = packs.map(
    ({ id, amount, priceCoins }) =>
      [
        id,
        [
          ['amount', amount],
          ['cost', priceCoins],
        ],
      ] as [string, [string, number][]],
  );
  const solution = solve(
    {
      direction: 'minimize',
      objective: 'cost',
      constraints: [['amount', { min: need }]],
      variables,
      integers: packs.map((pack) => pack.id),
    },
    { tolerance: 0 },
  );
  return solution.result;
}
