import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { describe, expect, test } from 'vitest';
import { watchSpecs } from '#renderer/curves/watch-spec.ts';

const readings = [
  { hour: 0, degC: 22, humidity: 80 },
  { hour: 12, degC: 28, humidity: 70 },
  { hour: 24, degC: 23, humidity: 85 },
];
const band = { lowestC: 18, highestC: 27, driest: 75, dampest: 95 };

/** A thin dashed line, drawn under the readings. */
function limit(up: number) {
  return {
    ink: 'muted',
    thin: true,
    dashed: true,
    pieces: [
      [
        [0, up],
        [24, up],
      ],
    ],
  };
}

describe('watchSpecs', () => {
  test('temperature and humidity each against the band, every reading in the table', () => {
    expect(watchSpecs(readings, band, plainDisplay)).toEqual([
      {
        title: 'Temperature from 22.0 to 28.0 °C',
        under: 'over 24.0 hours, against a band of 18.0 to 27.0 °C',
        label: 'Temperature from 22.0 to 28.0 over 24.0 hours; the band is 18.0 to 27.0',
        across: { unit: 'hours', most: 24 },
        up: { unit: '°C', most: 28 * 1.05 },
        lines: [limit(18), limit(27), { ink: 'ink', pieces: [readings.map(({ hour, degC }) => [hour, degC])] }],
        words: [
          { at: [24, 18], words: 'least 18.0 °C', ink: 'muted', lie: 'left', away: 16 },
          { at: [24, 27], words: 'most 27.0 °C', ink: 'muted', lie: 'left' },
        ],
        table: {
          headings: ['hour', '°C', 'in the band'],
          rows: [
            ['0.0', '22.0', 'yes'],
            ['12.0', '28.0', 'no'],
            ['24.0', '23.0', 'yes'],
          ],
        },
      },
      {
        title: 'Humidity from 70.0 to 85.0 %',
        under: 'over 24.0 hours, against a band of 75.0 to 95.0 %',
        label: 'Humidity from 70.0 to 85.0 over 24.0 hours; the band is 75.0 to 95.0',
        across: { unit: 'hours', most: 24 },
        up: { unit: '%', most: 95 * 1.05 },
        lines: [limit(75), limit(95), { ink: 'ink', pieces: [readings.map(({ hour, humidity }) => [hour, humidity])] }],
        words: [
          { at: [24, 75], words: 'least 75.0 %', ink: 'muted', lie: 'left', away: 16 },
          { at: [24, 95], words: 'most 95.0 %', ink: 'muted', lie: 'left' },
        ],
        table: {
          headings: ['hour', '%', 'in the band'],
          rows: [
            ['0.0', '80.0', 'yes'],
            ['12.0', '70.0', 'no'],
            ['24.0', '85.0', 'yes'],
          ],
        },
      },
    ]);
  });

  test('a workshop with a decimal comma reads commas', () => {
    const [first] = watchSpecs(readings, band, { ...plainDisplay, decimalComma: true });
    expect(first?.table.rows[1]).toEqual(['12,0', '28,0', 'no']);
  });
});
