import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { describe, expect, test } from 'vitest';
import { probeSpecs } from '#renderer/curves/probe-spec.ts';
import { coreHeat, type LoggedTreatment } from '#shared-calc/prepare/probe-log.ts';
import type { CoreReading } from '#shared-calc/trade/heat/kill-total.ts';

function specsOf(log: readonly CoreReading[], treatment: LoggedTreatment) {
  const heat = coreHeat(log, treatment);
  if (!heat.ok) throw new Error(heat.fault);
  return probeSpecs(log, treatment, { heat: heat.value, display: plainDisplay });
}

describe('probeSpecs', () => {
  test('half an hour at 121 in steam is 30 minutes, growing evenly from reading to reading', () => {
    const [core, kill] = specsOf(
      [
        [0, 121],
        [10, 121],
        [30, 121],
      ],
      { way: 'steam', aim: 'sterile', moistened: false },
    );
    expect([core?.title, kill?.title, kill?.table.rows.map((row) => row[2])]).toEqual([
      'The core was 121.0 °C at its hottest',
      '30.0 of 30 minutes reached',
      ['0.0', '10.0', '30.0'],
    ]);
  });

  test('baked dry only what is at 80 °C or over counts; the line stands there', () => {
    // From 60 to 100 in 40 min: over 80 for the last 20.
    const [core, counted] = specsOf(
      [
        [0, 60],
        [40, 100],
      ],
      { way: 'bake', aim: 'clean', moistened: false },
    );
    expect([core?.words?.map(({ words }) => words), counted?.title, counted?.under]).toEqual([
      ['80 °C'],
      '20.0 of 30 minutes reached',
      'Not long enough: treat this batch again',
    ]);
  });
});
