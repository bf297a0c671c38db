import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { describe, expect, test } from 'vitest';
import { plannedCore } from '#renderer/curves/planned-core.ts';
import { treatmentSpec } from '#renderer/curves/treatment-spec.ts';
import { treatLeaves } from '#shared-calc/prepare/treat-leaves.ts';
import type { TreatmentPlan } from '#shared-calc/trade/heat/leaf-treat-time.ts';
import type { TreatmentWay } from '#shared-calc/trade/heat/leaf-treatment.ts';

function planOf(way: TreatmentWay, altitudeM = 650): TreatmentPlan {
  const plan = treatLeaves(
    { way, aim: way === 'steam' ? 'sterile' : 'clean', leavesL: 43.51 },
    { altitudeM, pressureKpa: 103.421 },
  );
  if (!plan.ok) throw new Error(plan.fault);
  return plan.value;
}

describe('plannedCore', () => {
  test('in steam at 650 m the core is within 1 K after 25.74 min, in the oven at 90 after 22.49', () => {
    const [steam, bake] = (['steam', 'bake'] as const).map((way) => plannedCore(planOf(way)));
    expect([steam?.comeUp.toFixed(2), steam?.from, bake?.comeUp.toFixed(2), bake?.from]).toEqual([
      '25.74',
      25,
      '22.49',
      0,
    ]);
  });

  const heated = (['steam', 'bake'] as const).flatMap((way) =>
    [0, 650, 2400].map((altitude) => [way, altitude] as const),
  );

  test.each(heated)('%s at %s m: the drawn heat-up is the one that the minutes are worked from', (way, altitude) => {
    const plan = planOf(way, altitude);
    expect(Math.ceil((plannedCore(plan)?.comeUp ?? 0) - 1e-9)).toBe(plan.comeUp);
  });

  test('a pot is timed from when it boils: no core is drawn', () => {
    expect(plannedCore(planOf('boil'))).toBeUndefined();
  });

  test('the core only ever gets hotter and never reaches the steam', () => {
    const plan = planOf('steam');
    const heat = plannedCore(plan)?.points.map(([, degC]) => degC) ?? [];
    expect(heat).toEqual(heat.toSorted((one, other) => one - other));
    expect(Math.max(...heat)).toBeLessThan(plan.temperature);
  });
});

describe('treatmentSpec', () => {
  test('parts of a batch stand in their order, over after 15, 25, 51, 102 and 127 minutes', () => {
    const spec = treatmentSpec('steam', planOf('steam'), { under: '', display: plainDisplay });
    expect([spec?.across.ticks, spec?.phases?.map(({ words }) => words)]).toEqual([
      [0, 15, 25, 51, 102, 127],
      ['heat', 'vent', 'come up', 'hold, 51 min', 'release'],
    ]);
  });
});
