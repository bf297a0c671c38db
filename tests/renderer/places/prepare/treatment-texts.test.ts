import { describe, expect, test } from 'vitest';
import { askTreatment, noTreatment, type TreatmentTexts } from '#renderer/places/prepare/treatment-texts.ts';

const place = { altitudeM: 650, pressureKpa: 103.421 };

function asked(texts: Partial<TreatmentTexts>, ofJob?: number) {
  return askTreatment({ ...noTreatment, ...texts }, { place, ofJob, decimalComma: false });
}

describe('askTreatment', () => {
  // Scenario 5: 43.51 L at 650 m.
  test('all ways side by side: 348 min of steam, 200 of boiling, 136 of baking', () => {
    const found = asked({ leaves: '43.51 L' });
    expect(
      found.ok && found.value.ways.map(({ way, plan, suggested }) => [way, plan.ok && plan.value.minutes, suggested]),
    ).toEqual([
      ['steam', 348, false],
      ['boil', 200, true],
      ['bake', 136, false],
    ]);
  });

  test('leaves that were moistened are baked', () => {
    const found = asked({ leaves: '43.51 L', moistened: true });
    expect(found.ok && found.value.chosen.way).toBe('bake');
  });

  test('sterile is steam alone: the others say why not', () => {
    const found = asked({ leaves: '43.51', aim: 'sterile' });
    expect(found.ok && found.value.ways.map(({ plan }) => (plan.ok ? plan.value.batches : plan.fault))).toEqual([
      4,
      'Boiling cleans and does not sterilise; only pressure steam does.',
      'Baking cleans and does not sterilise; only pressure steam does.',
    ]);
  });

  test('a bigger pot and a fuller one take fewer batches; the oven keeps its own', () => {
    const found = asked({ leaves: '43.51', pot: '30', potFill: '75' });
    expect(found.ok && found.value.ways.map(({ plan }) => plan.ok && plan.value.batches)).toEqual([2, 2, 2]);
  });

  test('left empty, the leaves are those of the open job', () => {
    const found = asked({}, 43.51);
    expect(found.ok && found.value.leavesL).toBe(43.51);
  });

  test.each([
    [{}, 'Leaves: say how many loose litres, as 43.51 L.'],
    [{ leaves: '3 kg' }, 'Leaves is in L, a volume; "3 kg" does not fit.'],
    [{ leaves: '40', potFill: '120' }, 'Filled to is 100 % at most; 120 % is more.'],
  ])('%j is refused with its cure', (texts, says) => {
    expect(asked(texts)).toEqual({ ok: false, fault: says });
  });
});
