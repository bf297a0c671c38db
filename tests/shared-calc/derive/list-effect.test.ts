import { describe, expect, test } from 'vitest';
import { takePriceList } from '#shared-calc/acts/take-price-list.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { listEffects } from '#shared-calc/derive/list-effect.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { libraryJob, valueOf, withRecords } from '#tests/shared-calc/jobs/demo-jobs.ts';

const records = libraryJob();
const unpriced: Records = {
  ...records,
  packPrice: new Map([...records.packPrice].filter(([, { pack }]) => pack !== 'M25b-1')),
};

function effectOf(of: Records, pack: string, priceCoins: number, from: string) {
  const derived = derive(of, DEMO_DAY);
  const rows = [{ act: 'price', pack, priceCoins, from } as const];
  const supplier = of.pack.get(pack)?.supplier ?? of.material.get(of.pack.get(pack)?.material ?? '')?.supplier ?? '';
  return listEffects(derived, applyChange(of, valueOf(takePriceList.run(derived, { supplier, rows }))));
}

describe('listEffects', () => {
  test('a price that was missing makes the quote whole, and says what it comes to', () => {
    const effects = effectOf(unpriced, 'M25b-1', 4000, DEMO_DAY);
    const library = effects.find(({ job }) => job === 'J02');
    expect(library).toMatchObject({ from: { isAtLeast: true, prices: 1 }, to: { isAtLeast: false, prices: 0 } });
    expect(library && library.to.grossCoins > library.from.grossCoins).toBe(true);
  });

  test('a price of a later day changes no quote today', () => {
    expect(effectOf(records, 'M01-10', 2000, '2028-01-01')).toEqual([]);
  });

  test('a job that is sold is left out', () => {
    const sold = withRecords(
      unpriced,
      'job',
      [...unpriced.job.values()].map((job) => ({ ...job, state: 'ordered' as const })),
    );
    expect(effectOf(sold, 'M25b-1', 4000, DEMO_DAY)).toEqual([]);
  });
});
