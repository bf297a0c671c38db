import { describe, expect, test } from 'vitest';
import { checksOf } from '#shared-calc/bench/checks.ts';
import { missingFigures, sayMissing } from '#shared-calc/bench/waits.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import type { Records, Tank } from '#shared-calc/records/records.ts';
import { demoOnce, demoRecords } from '#tests/demo-bench.ts';

/** A client's tank, taken into the tank book before its dam was measured. */
function withoutDam(): Records {
  const records = demoRecords();
  const t07 = records.tank.get('T07');
  if (!t07) throw new Error('no T07');
  const { damHeightMm: _, ...measured } = t07;
  const tank: Tank = { ...measured, id: 'T15' };
  return { ...records, tank: new Map([...records.tank, ['T15', tank]]) };
}

describe('missingFigures', () => {
  test('a tank without its dam: one line, not eighteen sentences', () => {
    const bench = demoOnce({ sizes: ['T15'] }, withoutDam());
    expect(missingFigures(bench, 'T15').map(sayMissing)).toEqual(['dam not measured; 18 checks wait for it.']);
  });

  test.each([
    [{ shelf_rating: '' }, ['shelf rating has no figure; 1 check waits for it.']],
    [{ litter: 'litter + 1 mm' }, ['litter depth depends on itself; 10 checks wait for it.']],
    [{ litter: '5 kg' }, ['litter depth cannot be read; 10 checks wait for it.']],
    [{ shelf_rating: '1 kg / 0' }, ['shelf rating divides by zero; 1 check waits for it.']],
    [{}, []],
  ])('%j', (job: Readonly<Record<string, string>>, says) => {
    const bench = demoOnce({ sizes: ['T07'], job });
    expect(missingFigures(bench, 'T07').map(sayMissing)).toEqual(says);
  });
});

describe('checksOf', () => {
  test('a check that waits for a figure says so, and claims nothing of the tank', () => {
    const bench = demoOnce({ sizes: ['T15'] }, withoutDam());
    const waiting = checksOf(bench, 'T15', plainDisplay).filter(({ state }) => state === 'not known yet');
    expect(waiting.length).toBe(18);
    expect(new Set(waiting.map(({ says }) => says))).toEqual(new Set(['Cannot be worked yet: dam not measured.']));
  });
});
