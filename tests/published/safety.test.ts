import { describe, expect, test } from 'vitest';
import { cautionEntry, type CautionId } from '#shared-calc/cautions/all-cautions.ts';
import { PRACTICE, PRESSURE_CANNER } from '#shared-calc/cautions/sources.ts';
import { treatLeaves } from '#shared-calc/prepare/treat-leaves.ts';
import { floorPressure } from '#shared-calc/trade/mass/floor-pressure.ts';

const place = { altitudeM: 0, pressureKpa: 103.421 };

function wordsOf(...ids: readonly CautionId[]): string {
  return ids.map((id) => cautionEntry(id).says).join(' ');
}

describe('floor loads, IRC Table R301.5', () => {
  // 40 lb/ft2 in rooms, 30 in sleeping rooms; worked with 1 lb/ft2 = 4.88242763638 kg/m2
  test.each([
    { pounds: 40, kPa: 1.915, kg: 195.3 },
    { pounds: 30, kPa: 1.436, kg: 146.5 },
  ])('$pounds lb/ft2 are $kPa kN/m2, $kg kg a square metre', ({ pounds, kPa, kg }) => {
    expect(pounds * 4.88242763638).toBeCloseTo(kg, 1);
    expect(floorPressure.compute([pounds * 4.88242763638, 1])).toBeCloseTo(kPa, 3);
  });

  test('a load over the room is no limit under one stand, and the survey says whose word counts', () => {
    expect(cautionEntry('buildingLoad').decides).toBe('Building owner; structural engineer if over the shelf plate');
  });
});

describe('ovens', () => {
  // Fletcher et al. 2007: single leaves of eight species ignite at 227 to 453 degC on average;
  // Thermochimica Acta 390:83-91, 2002: volatiles leave at 120 to 160 degC
  test('no bake is planned at or over what drives volatiles off, 107 K below the first ignition', () => {
    const bake = (ovenC: number) => treatLeaves({ way: 'bake', aim: 'clean', leavesL: 10, ovenC }, place).ok;
    expect([bake(105), bake(120), bake(120.1), bake(227)]).toEqual([true, true, false, false]);
  });

  test('the usual oven stands between 93 and 110 degC, as advised (from memory)', () => {
    const plan = treatLeaves({ way: 'bake', aim: 'clean', leavesL: 10 }, place);
    expect(plan.ok && plan.value.temperature).toBe(105);
  });

  test('a bake is attended', () => {
    expect(wordsOf('ovenAttended')).toContain('Bake attended');
  });
});

describe('pressure vessels, PNW 421 and the USDA bulletin on canning', () => {
  test('ten minutes of venting stand before the core comes up', () => {
    const plan = treatLeaves({ way: 'steam', aim: 'sterile', leavesL: 10 }, place);
    expect(plan.ok && plan.value.steps.slice(0, 3).map(({ name, minutes }) => [name, minutes])).toEqual([
      ['heat', 15],
      ['vent', 10],
      ['come up', 26],
    ]);
  });

  test.each([
    'Vent 10 min',
    'Never open it under pressure',
    'zero on the gauge',
    'lift the lid away from your face',
    'never cool it with water',
    'Dial gauge checked yearly',
    'hardened safety plug is replaced',
  ])('the card says: %s', (words) => {
    const ids = ['steamVent', 'steamOpening', 'steamVessel'] as const;
    expect(wordsOf(...ids)).toContain(words);
    expect(ids.map((id) => cautionEntry(id).source)).toEqual(ids.map(() => PRESSURE_CANNER));
  });

  test("how full a vessel is loaded with leaves is nobody's published figure", () => {
    expect(wordsOf('steamLoad')).toContain('two thirds full at most');
    expect(cautionEntry('steamLoad').source).toBe(PRACTICE);
  });
});

describe('what the cautions take from standards, public bodies and practice', () => {
  test.each([
    ['29 CFR 1910.1053: silica, wet it and never sweep dry', ['mineralDust'], ['wet it first', 'never sweep dry']],
    [
      'CDC: under-fives, over-65s, weak immunity',
      ['peopleAtRisk'],
      ['under-fives', 'over 65', 'weak immunity', 'Wash hands'],
    ],
    [
      'CDC: not in kitchens or where food is made',
      ['hands'],
      ['Never clean or drain in a kitchen or where food is made', 'wash with soap'],
    ],
    [
      'from memory: residual-current protection of 30 mA or less, drip loops',
      ['electrics'],
      ['30 mA or less', 'drip loops'],
    ],
    [
      'common practice: every 14 days; from memory: warm water that sprays, 20 to 45 degC',
      ['reservoir'],
      ['every 14 days', '20 to 45 degC'],
    ],
    ['36 CFR 2.1, from memory, and 223.239: who owns the land is asked', ['collecting'], ['owner of the land']],
    [
      '50 CFR 16.14, from memory: media, plants and animals are not dumped outdoors',
      ['neverRelease', 'wasteWater'],
      ['Never release', 'outdoors', 'never to a stream'],
    ],
  ] as const)('%s', (_source, ids, words) => {
    expect(words.filter((each) => !wordsOf(...ids).includes(each))).toEqual([]);
  });
});
