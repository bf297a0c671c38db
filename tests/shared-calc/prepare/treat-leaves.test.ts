import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { treatLeaves, waysSideBySide } from '#shared-calc/prepare/treat-leaves.ts';
import { treatmentWays } from '#shared-calc/trade/heat/leaf-treatment.ts';

const place = { altitudeM: 650, pressureKpa: 103.421 };
const leaves = fc.record({
  way: fc.constantFrom(...treatmentWays),
  aim: fc.constant('clean' as const),
  leavesL: fc.double({ min: 0.1, max: 300, noNaN: true }),
});

function minutes(plan: ReturnType<typeof treatLeaves>): number {
  if (!plan.ok) throw new Error(plan.fault);
  return plan.value.minutes;
}

describe('treatLeaves', () => {
  test('more leaves never take less time, and a higher workshop never less either', () => {
    fc.assert(
      fc.property(leaves, fc.double({ min: 0, max: 100, noNaN: true }), (some, more) => {
        const now = minutes(treatLeaves(some, place));
        expect(minutes(treatLeaves({ ...some, leavesL: some.leavesL + more }, place))).toBeGreaterThanOrEqual(now);
        const higher = { ...place, altitudeM: place.altitudeM + more };
        expect(minutes(treatLeaves(some, higher))).toBeGreaterThanOrEqual(now);
      }),
    );
  });

  test('where the altitude or the vessel is not given, only the ways that need neither are worked', () => {
    const ways = (somewhere: Parameters<typeof waysSideBySide>[1]) =>
      waysSideBySide({ aim: 'clean', leavesL: 10, moistened: false }, somewhere).map(({ way, plan }) => [way, plan.ok]);
    const { altitudeM, pressureKpa } = place;
    expect(ways({ pressureKpa })).toEqual([
      ['steam', false],
      ['boil', false],
      ['bake', true],
    ]);
    expect(ways({ altitudeM })).toEqual([
      ['steam', false],
      ['boil', true],
      ['bake', true],
    ]);
  });

  test('a cooler oven never shortens, down to where the core can no longer get there', () => {
    fc.assert(
      fc.property(fc.integer({ min: 91, max: 120 }), fc.integer({ min: 91, max: 120 }), (one, other) => {
        const bake = (ovenC: number) => minutes(treatLeaves({ way: 'bake', aim: 'clean', leavesL: 20, ovenC }, place));
        expect(bake(Math.min(one, other))).toBeGreaterThanOrEqual(bake(Math.max(one, other)));
      }),
    );
    expect(treatLeaves({ way: 'bake', aim: 'clean', leavesL: 20, ovenC: 90 }, place)).toEqual({
      ok: false,
      fault: 'The core can never reach 90 C in a medium at 90 C.',
    });
  });

  test('an oven over 120 C is refused, and so is boiling where water boils below 90 C', () => {
    expect([
      treatLeaves({ way: 'bake', aim: 'clean', leavesL: 20, ovenC: 121 }, place),
      treatLeaves({ way: 'boil', aim: 'clean', leavesL: 20 }, { ...place, altitudeM: 3500 }),
    ]).toEqual([
      { ok: false, fault: 'Leaves can scorch or catch fire; 120 C is the limit here.' },
      { ok: false, fault: expect.stringContaining('boiling leaves needs 90 C') as string },
    ]);
  });

  test('the way suggested is always one that works here, at any height at which one does', () => {
    const height = fc.double({ min: -400, max: 5000, noNaN: true });
    // Above about 2,800 m, 15 psi does not sterilise, and no other way does.
    const steamed = fc.double({ min: -400, max: 2800, noNaN: true });
    const wishes = fc.oneof(
      fc.tuple(height, fc.constant('clean' as const)),
      fc.tuple(steamed, fc.constant('sterile' as const)),
    );
    fc.assert(
      fc.property(wishes, fc.boolean(), ([altitudeM, aim], moistened) => {
        const ways = waysSideBySide({ aim, leavesL: 20, moistened }, { ...place, altitudeM });
        expect(ways.filter(({ suggested }) => suggested).map(({ plan }) => plan.ok)).toEqual([true]);
      }),
    );
  });

  test('each way brings its own cautions, and who decides', () => {
    const cautions = waysSideBySide({ aim: 'clean', leavesL: 10, moistened: false }, place).map(({ plan }) =>
      plan.ok ? plan.value.cautions.map(({ decides }) => decides) : [],
    );
    expect(cautions.map((each) => new Set(each))).toEqual([
      new Set(['Grower', 'Whoever services the vessel', 'Owner of the land, permits office']),
      new Set(['Grower', 'Owner of the land, permits office']),
      new Set(['Grower', 'Owner of the land, permits office']),
    ]);
  });
});
