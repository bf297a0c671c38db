import fc from 'fast-check';
import type { LandedQuestion } from '#shared-calc/buy/least-landed.ts';

/** Materials that up to three of four suppliers sell, beside goods that one alone does; terms as shops have them. */
export function randomOffers(materials: number): fc.Arbitrary<LandedQuestion> {
  const supplier = fc.constantFrom('S1', 'S2', 'S3', 'S4');
  const asked = fc.record({ supplier, coins: fc.integer({ min: 0, max: 6000 }) });
  const choice = fc.uniqueArray(asked, { minLength: 1, maxLength: 3, selector: (each) => each.supplier });
  const terms = fc.record({
    carriageCoins: fc.integer({ min: 0, max: 2500 }),
    freeFromCoins: fc.option(fc.integer({ min: 0, max: 20_000 }), { nil: undefined }),
  });
  return fc
    .record({
      choices: fc.array(choice, { minLength: 1, maxLength: materials, size: 'max' }),
      fixed: fc.dictionary(supplier, fc.integer({ min: 0, max: 9000 })),
      terms: fc.tuple(terms, terms, terms, terms),
    })
    .map(({ choices, fixed, terms: four }) => ({
      choices,
      fixed: new Map(Object.entries(fixed)),
      terms: new Map(
        four.map(({ carriageCoins, freeFromCoins }, at) => [
          `S${at + 1}`,
          { carriageCoins, ...(freeFromCoins !== undefined && { freeFromCoins }) },
        ]),
      ),
    }));
}
