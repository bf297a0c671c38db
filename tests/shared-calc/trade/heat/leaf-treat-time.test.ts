import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { leafTreatTime, type TreatmentPlan } from '#shared-calc/trade/heat/leaf-treat-time.ts';
import type { LeafTreatment } from '#shared-calc/trade/heat/leaf-treatment.ts';

const brackenlume = { leavesL: 43.51, altitudeM: 650 } as const;

describe('leafTreatTime', () => {
  // 30 min at 121 degC: CDC Guideline for Disinfection and Sterilization in Healthcare Facilities 2008, Table 7. Minutes of
  // a batch: common practice, no source. The rest is worked by hand from the sums.
  test('pressure steam in Brackenlume: 4 batches, 508 min, 56 of them attended', () => {
    const plan = planned({ ...brackenlume, way: 'steam', aim: 'sterile', vesselL: 21, fill: 0.6 });
    expect(figuresOf(plan)).toEqual([4, 26, 51, 127, 508, 56]);
    expect(plan.steps.map(({ name, minutes }) => `${name} ${minutes}`)).toEqual([
      'heat 15',
      'vent 10',
      'come up 26',
      'hold 51',
      'release 25',
    ]);
    expect([plan.temperature.toFixed(2), plan.reference]).toEqual([
      '119.76',
      '30 min at 121 degC (wrapped goods), z 10 K',
    ]);
  });

  test('boiling there: 4 batches of 50 min at 97.81 degC', () => {
    const plan = planned({ ...brackenlume, way: 'boil', aim: 'clean' });
    expect([...figuresOf(plan), plan.temperature.toFixed(2)]).toEqual([4, 20, 15, 50, 200, 56, '97.81']);
  });

  test('baking at 105 degC in a 60 L oven half full: 2 batches of 68 min', () => {
    const plan = planned({ ...brackenlume, way: 'bake', aim: 'clean', vesselL: 60, fill: 0.5 });
    expect([...figuresOf(plan), plan.temperature]).toEqual([2, 23, 30, 68, 136, 28, 105]);
  });

  test('left out, the vessel is the usual one of the way, the steam 15 psi, the oven 105 degC', () => {
    const steam = { ...brackenlume, way: 'steam', aim: 'clean' } as const;
    const bake = { ...brackenlume, way: 'bake', aim: 'clean' } as const;
    expect(leafTreatTime(steam)).toEqual(
      leafTreatTime({ ...steam, vesselL: 21, fill: 0.6, gaugeKpa: 103.42135939752 }),
    );
    expect(leafTreatTime(bake)).toEqual(leafTreatTime({ ...bake, vesselL: 60, fill: 0.5, ovenC: 105 }));
  });

  test.each<{ as: string; of: Partial<LeafTreatment>; says: string }>([
    {
      as: 'a sterile bake',
      of: { way: 'bake', aim: 'sterile' },
      says: 'Baking cleans and does not sterilise; only pressure steam does.',
    },
    {
      as: 'a sterile boil',
      of: { way: 'boil', aim: 'sterile' },
      says: 'Boiling cleans and does not sterilise; only pressure steam does.',
    },
    {
      as: 'an oven over 120 degC',
      of: { way: 'bake', ovenC: 121 },
      says: 'Leaves can scorch or catch fire; 120 C is the limit here.',
    },
    {
      as: 'an oven too cool for its core',
      of: { way: 'bake', ovenC: 90 },
      says: 'The core can never reach 90 C in a medium at 90 C.',
    },
    {
      as: 'a pot that boils below 90 degC',
      of: { way: 'boil', altitudeM: 3000 },
      says: 'Water boils at 89.97 C here; boiling leaves needs 90 C or more. Bake or steam them.',
    },
    { as: 'no leaves at all', of: { leavesL: 0 }, says: 'There is nothing to treat.' },
    { as: 'leaves below zero', of: { leavesL: -1 }, says: 'Leaves cannot be below zero.' },
    { as: 'a vessel that holds nothing', of: { vesselL: 0 }, says: 'The vessel must be more than zero.' },
    { as: '60 typed for 60 %', of: { fill: 60 }, says: 'Fill is a share from 0 to 1; you gave 60.' },
    {
      as: 'a height above the air formula',
      of: { altitudeM: 20000 },
      says: 'The air formula runs from -5000 to 11000 m; you gave 20000 m.',
    },
    {
      as: 'a pot above the air formula',
      of: { way: 'boil', altitudeM: 20000 },
      says: 'The air formula runs from -5000 to 11000 m; you gave 20000 m.',
    },
  ])('refuses $as', ({ of, says }) => {
    expect(leafTreatTime({ ...brackenlume, way: 'steam', aim: 'clean', ...of })).toEqual({ refused: says });
  });

  test('higher up a batch in steam never takes less', () => {
    fc.assert(
      fc.property(fc.integer({ min: -400, max: 2300 }), fc.integer({ min: 0, max: 500 }), (low, rise) => {
        const at = (altitudeM: number) => planned({ leavesL: 10, altitudeM, way: 'steam', aim: 'sterile' });
        expect(at(low + rise).hold).toBeGreaterThanOrEqual(at(low).hold);
      }),
    );
  });
});

function planned(treatment: LeafTreatment): TreatmentPlan {
  const plan = leafTreatTime(treatment);
  if ('refused' in plan) throw new Error(plan.refused);
  return plan;
}

function figuresOf({ batches, comeUp, hold, batchMinutes, minutes, attended }: TreatmentPlan): readonly number[] {
  return [batches, comeUp, hold, batchMinutes, minutes, attended];
}
