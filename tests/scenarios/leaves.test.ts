import { describe, expect, test } from 'vitest';
import { treatLeaves, waysSideBySide, type LeavesToTreat } from '#shared-calc/prepare/treat-leaves.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { demoBench, demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();
const workshop = workshopOf(records);

function figures(leaves: LeavesToTreat) {
  const plan = treatLeaves(leaves, workshop);
  if (!plan.ok) return plan.fault;
  const { batches, comeUp, hold, minutes, attended, temperature } = plan.value;
  return { batches, comeUp, hold, minutes, attended, temperature: Number(temperature.toFixed(2)) };
}

describe('scenario 5: the leaves of scenario 4, treated in Brackenlume at 650 m', () => {
  const leavesL = 43.51;

  test('three sizes need 530.84 g, 43.51 L loose', () => {
    const bench = demoBench({ sizes: ['T03', 'T07', 'T08'], job: { soil_rise: '0 mm' } }, records);
    const litres = ['T03', 'T07', 'T08'].map((size) => Number(bench.box(size, 'leaves_loose').value) * 1000);
    expect(litres.reduce((sum, each) => sum + each)).toBeCloseTo(43.511, 2);
  });

  test('pressure steam: 119.76 C, core there after 26 min, 51 min of hold, 4 batches, 508 min, 56 attended', () => {
    expect(figures({ way: 'steam', aim: 'sterile', leavesL })).toEqual({
      batches: 4,
      comeUp: 26,
      hold: 51,
      minutes: 508,
      attended: 56,
      temperature: 119.76,
    });
  });

  test('boiling: water boils at 97.81 C, 4 batches of 50 min', () => {
    expect(figures({ way: 'boil', aim: 'clean', leavesL })).toEqual({
      batches: 4,
      comeUp: 20,
      hold: 15,
      minutes: 200,
      attended: 56,
      temperature: 97.81,
    });
  });

  test('baking at 105 C: 2 batches of 23 + 30 + 15 min, 136 min, 28 attended', () => {
    expect(figures({ way: 'bake', aim: 'clean', leavesL })).toEqual({
      batches: 2,
      comeUp: 23,
      hold: 30,
      minutes: 136,
      attended: 28,
      temperature: 105,
    });
  });

  test('steam that only cleans is held half an hour with the core at 82: 7 + 30 min, 348 by the clock', () => {
    // 12 log10(1.4 x 99.763 / 37.763) = 6.82; 15 + 10 + 7 + 30 + 25 = 87 a batch
    expect(figures({ way: 'steam', aim: 'clean', leavesL })).toEqual({
      batches: 4,
      comeUp: 7,
      hold: 30,
      minutes: 348,
      attended: 56,
      temperature: 119.76,
    });
  });

  test.each([
    ['clean', true, 'bake'],
    ['clean', false, 'boil'],
    ['sterile', true, 'steam'],
    ['sterile', false, 'steam'],
  ] as const)('aim %s, moistened 16 h before: %s -> suggest %s', (aim, moistened, way) => {
    const ways = waysSideBySide({ aim, leavesL, moistened }, workshop);
    expect(ways.filter(({ suggested }) => suggested).map((each) => each.way)).toEqual([way]);
  });

  test('sterile leaves only steam; the others say why', () => {
    const ways = waysSideBySide({ aim: 'sterile', leavesL, moistened: true }, workshop);
    expect(ways.map(({ way, plan }) => [way, plan.ok ? plan.value.minutes : plan.fault])).toEqual([
      ['steam', 508],
      ['boil', 'Boiling cleans and does not sterilise; only pressure steam does.'],
      ['bake', 'Baking cleans and does not sterilise; only pressure steam does.'],
    ]);
  });

  test('another vessel, worked by hand: 43.51 L in 30 L filled half is 3 batches of 127 min', () => {
    expect(figures({ way: 'steam', aim: 'sterile', leavesL, vesselL: 30, fill: 0.5 })).toMatchObject({
      batches: 3,
      minutes: 381,
      attended: 42,
    });
  });
});
