import { describe, expect, test } from 'vitest';
import { misfitOf, tankMisfit } from '#shared-calc/records/misfit.ts';
import { sayFieldFault } from '#shared-calc/words/say-field-fault.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import type { Tank } from '#shared-calc/records/records.ts';

const tank: Tank = {
  id: 'T07',
  label: '',
  shape: 'rectangle',
  insideLengthMm: 900,
  insideDepthMm: 445,
  insideHeightMm: 600,
  damHeightMm: 150,
  clientsOwn: false,
  note: '',
};

describe('tankMisfit', () => {
  test('a tank whose measurements go together has none', () => {
    expect(tankMisfit(tank)).toBe(undefined);
  });

  test.each([
    [{ damHeightMm: 601 }, 'The dam is 601 mm and the tank only 600 mm high inside.'],
    [{ frontVentMm: 601 }, 'The front vent is as high as the tank.'],
    [{ shape: 'corner', sideReturnMm: 901 }, 'The side return is 901 mm and the side only 900 mm.'],
    [{ shape: 'bow', frontBowMm: 446 }, 'The bow is deeper than the tank.'],
  ] as const)('%o does not go together', (differs, says) => {
    const misfit = tankMisfit({ ...tank, ...differs });
    expect(misfit && sayFieldFault(misfit)).toBe(says);
  });
});

describe('misfitOf a kind of culture', () => {
  const records = demoRecords();
  const flies = records.cultureKind.get('C5');
  const springtails = records.cultureKind.get('C1');
  if (!flies || !springtails) throw new Error('no C1 or C5');
  const { productiveDays: _, ...withoutDays } = flies;

  test.each([
    ['flies with their productive days', flies, undefined],
    ['springtails without any', springtails, undefined],
    ['flies without', withoutDays, 'Flies are kept for their productive days: write those first.'],
    [
      'springtails made flies',
      { ...springtails, animals: 'flies' as const },
      'Flies are kept for their productive days: write those first.',
    ],
  ])('%s', (_name, record, says) => {
    const misfit = misfitOf({ kind: 'cultureKind', record }, records);
    expect(misfit && sayFieldFault(misfit)).toBe(says);
  });
});
