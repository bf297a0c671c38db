import fc from 'fast-check';
import loadHighs from 'highs';
import { describe, expect, test } from 'vitest';
import { leastLanded, type LandedQuestion } from '#shared-calc/buy/least-landed.ts';
import { randomOffers } from '#tests/shared-calc/buy/random-offers.ts';

/** Suppliers of whole runs as one integer model: larger and more than the everyday tests try. */
describe('leastLanded against a second solver', () => {
  test('300 runs of up to 40 materials from four suppliers land for the same where it is proven', async () => {
    const highs = await loadHighs();
    const proven: boolean[] = [];
    fc.assert(
      fc.property(randomOffers(40), (question) => {
        const found = leastLanded(question);
        const solution = highs.solve(modelOf(question), { mip_rel_gap: 0, mip_abs_gap: 0 });
        const least = solution.Status === 'Optimal' ? Math.round(solution.ObjectiveValue) + fixedOf(question) : NaN;
        proven.push(found.proven);
        expect(found.proven ? found.coins : Math.max(found.coins, least)).toBe(found.proven ? least : found.coins);
      }),
      { numRuns: 300, seed: 8 },
    );
    expect(proven.filter(Boolean).length).toBeGreaterThan(250);
  }, 600_000);
});

function fixedOf({ fixed }: LandedQuestion): number {
  return [...fixed.values()].reduce((sum, coins) => sum + coins, 0);
}

/** `t0_S1`: material 0 from S1; `p_S1`: its carriage is paid; `f_S1`: its goods travel free. */
function modelOf({ fixed, choices, terms }: LandedQuestion): string {
  const take = (at: number, supplier: string) => `t${at}_${supplier}`;
  const of = (supplier: string) =>
    choices.flatMap((some, at) =>
      some.filter((asked) => asked.supplier === supplier).map(({ coins }) => ({ name: take(at, supplier), coins })),
    );
  const rows = [...terms].flatMap(([supplier, { freeFromCoins = 1e7 }]) => {
    const some = of(supplier);
    const used = some.map(({ name }) => `${name} - 1000 p_${supplier} - 1000 f_${supplier} <= 0`);
    const goods = some.map(({ name, coins }) => `+ ${coins} ${name}`).join(' ');
    const bought = fixed.get(supplier);
    return [
      ...used,
      ...(bought === undefined ? [] : [`p_${supplier} + f_${supplier} >= 1`]),
      `${goods} - ${freeFromCoins} f_${supplier} >= ${-(bought ?? 0)}`,
    ];
  });
  return [
    'Minimize',
    ` coins: ${[
      ...choices.flatMap((some, at) => some.map(({ supplier, coins }) => `${coins} ${take(at, supplier)}`)),
      ...[...terms].map(([supplier, { carriageCoins }]) => `${carriageCoins} p_${supplier}`),
    ].join(' + ')}`,
    'Subject To',
    ...choices.map((some, at) => ` one${at}: ${some.map(({ supplier }) => take(at, supplier)).join(' + ')} = 1`),
    ...rows.map((row, at) => ` r${at}: ${row}`),
    'Binary',
    ...choices.flatMap((some, at) => some.map(({ supplier }) => ` ${take(at, supplier)}`)),
    ...[...terms.keys()].flatMap((supplier) => [` p_${supplier}`, ` f_${supplier}`]),
    'End',
  ].join('\n');
}
