import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coreHeat } from '#shared-calc/prepare/probe-log.ts';
import { heatTarget, heatTargets } from '#shared-calc/trade/heat-targets.ts';
import { coreAfter } from '#shared-calc/trade/heat/leaf-heating.ts';
import { leafTreatTime, type TreatmentPlan } from '#shared-calc/trade/heat/leaf-treat-time.ts';
import { treatmentAims, treatmentWays, type LeafTreatment } from '#shared-calc/trade/heat/leaf-treatment.ts';
import { steamTemperatureC } from '#shared-calc/trade/heat/steam-temp.ts';
import type { CoreReading } from '#shared-calc/trade/heat/kill-total.ts';

const treatments: fc.Arbitrary<LeafTreatment> = fc.record({
  way: fc.constantFrom(...treatmentWays),
  aim: fc.constantFrom(...treatmentAims),
  leavesL: fc.double({ min: 0.5, max: 200, noNaN: true }),
  altitudeM: fc.double({ min: -400, max: 4500, noNaN: true }),
  gaugeKpa: fc.double({ min: 0, max: 150, noNaN: true }),
  ovenC: fc.double({ min: 91, max: 120, noNaN: true }),
  moistened: fc.boolean(),
  ovenPowerW: fc.double({ min: 80, max: 2000, noNaN: true }),
});

function planned(treatment: LeafTreatment): TreatmentPlan | undefined {
  const plan = leafTreatTime(treatment);
  return 'refused' in plan ? undefined : plan;
}

/** Planned core temperature of one batch, minute by minute; the core of a pot is assumed as warm as its water. */
function idealCore({ core, comeUp, hold, temperature }: TreatmentPlan): readonly CoreReading[] {
  if (!core) {
    return [
      [0, 20],
      [comeUp, temperature],
      [comeUp + hold, temperature],
    ];
  }
  return Array.from({ length: comeUp + hold + 1 }, (_, minute): CoreReading => [minute, coreAfter(minute, core)]);
}

describe('heatTarget', () => {
  // Laws over random treatments; each target names its source in heat-targets.ts.
  test('sterile is reached by steam alone; clean by every way', () => {
    const reached = treatmentAims.map((aim) => treatmentWays.filter((way) => heatTarget({ aim, way }) !== undefined));
    expect(reached).toEqual([['steam', 'boil', 'bake'], ['steam']]);
  });

  test('leaves that were not moistened must get 20 K hotter', () => {
    const bake = (moistened: boolean) => heatTarget({ aim: 'clean', way: 'bake', moistened })?.coreC;
    expect([bake(true), bake(false)]).toEqual([60, 80]);
  });
});

describe('plan and probe log', () => {
  test('the core that a plan expects passes the log of the same aim', () => {
    fc.assert(
      fc.property(treatments, (treatment) => {
        const plan = planned(treatment);
        fc.pre(plan !== undefined);
        const heat = coreHeat(idealCore(plan), { moistened: false, ...treatment });
        expect(heat.ok && heat.value.enough).toBe(true);
      }),
    );
  });

  test.each(Object.entries(heatTargets))('nine tenths of the minutes of %s do not pass', (_, target) => {
    const log: readonly CoreReading[] = [
      [0, target.coreC],
      [0.9 * target.minutes * ('scale' in target ? 10 ** 0.6 : 1), target.coreC],
    ];
    const found = treatmentAims
      .flatMap((aim) => treatmentWays.flatMap((way) => [true, false].map((moistened) => ({ aim, way, moistened }))))
      .filter((each) => heatTarget(each) === target)
      .map((each) => coreHeat(log, each));
    expect(found.length).toBeGreaterThan(0);
    expect(found.filter((heat) => !heat.ok || heat.value.enough)).toEqual([]);
  });
});

describe('sterile', () => {
  test('is never answered for a core below 115 degC, and more gauge never holds longer', () => {
    const gauge = fc.double({ min: 0, max: 150, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: -400, max: 4500, noNaN: true }), gauge, gauge, (altitudeM, one, other) => {
        const [less, more] = [Math.min(one, other), Math.max(one, other)].map((gaugeKpa) =>
          planned({ way: 'steam', aim: 'sterile', leavesL: 10, altitudeM, gaugeKpa }),
        );
        expect(less === undefined).toBe(Number(steamTemperatureC(altitudeM, Math.min(one, other))) - 1 < 115);
        expect(more?.hold ?? 0).toBeLessThanOrEqual(less?.hold ?? Infinity);
      }),
    );
  });
});
