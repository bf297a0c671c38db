import { describe, expect, test } from 'vitest';
import { disorderOf } from '#shared-calc/records/animal-order.ts';
import type { AnimalKind } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { sayMisfit } from '#shared-calc/words/say-misfit.ts';
import { demoRecords } from '#tests/renderer/demo-records.ts';
import { withRecords } from '#tests/shared-calc/jobs/demo-jobs.ts';

const demo = demoRecords();

function saidOf(figures: Partial<AnimalKind>, records = demo): string | undefined {
  const kind: AnimalKind = {
    id: 'A9',
    label: 'Frog',
    harmToPeople: '',
    permits: '',
    quarantineDays: 60,
    note: '',
    ...figures,
  };
  const disorder = disorderOf(kind, records);
  return disorder && sayMisfit(disorder);
}

describe('disorderOf', () => {
  test('the kinds of the demo are in order', () => {
    expect([...demo.animalKind.values()].filter((kind) => disorderOf(kind, demo))).toEqual([]);
  });

  test.each<[Partial<AnimalKind>, string]>([
    [{ floor: 27, actFrom: 26, ceiling: 28 }, 'Floor, 27 °C, must lie below act from, 26 °C.'],
    [{ floor: 26, actFrom: 26 }, 'Floor, 26 °C, must lie below act from, 26 °C.'],
    [{ actFrom: 28, ceiling: 27 }, 'Act from, 28 °C, may not lie above ceiling, 27 °C.'],
    [{ floor: 27, ceiling: 27 }, 'Floor, 27 °C, must lie below ceiling, 27 °C.'],
    [{ bandLow: 0.8, bandHigh: 0.8 }, 'Humidity from, 80 %, must lie below humidity to, 80 %.'],
    [{ groupLeast: 5, groupMost: 4 }, 'Group from, 5, may not lie above group to, 4.'],
  ])('%j is refused', (figures, says) => {
    expect(saidOf(figures)).toBe(says);
  });

  test.each<[Partial<AnimalKind>]>([
    [{}],
    [{ floor: 18 }],
    [{ actFrom: 27, ceiling: 27 }],
    [{ groupLeast: 4, groupMost: 4 }],
    [{ bandLow: 0.9 }],
  ])('%j stands: a figure that is left out is in no order', (figures) => {
    expect(saidOf(figures)).toBeUndefined();
  });

  test('it is said in the unit that the workshop reads', () => {
    const inFahrenheit = withRecords(demo, 'workshop', [{ ...workshopOf(demo), unitsShown: { temperature: 'degF' } }]);

    expect(saidOf({ floor: 30, ceiling: 25 }, inFahrenheit)).toBe('Floor, 86 °F, must lie below ceiling, 77 °F.');
  });
});
