import { describe, expect, test } from 'vitest';
import { watchSpecs } from '#renderer/curves/watch-spec.ts';

describe('watchSpecs', () => {
  test('temperature and humidity each against the band, every reading in the table', () => {
    const readings = [
      { hour: 0, degC: 22, humidity: 80 },
      { hour: 12, degC: 28, humidity: 70 },
      { hour: 24, degC: 23, humidity: 85 },
    ];
    const specs = watchSpecs(readings, { lowestC: 18, highestC: 27, driest: 75, dampest: 95 }, false);
    expect(specs.map(({ title, table }) => [title, table.rows.map((row) => row[2])])).toEqual([
      ['Temperature from 22.0 to 28.0 °C', ['yes', 'no', 'yes']],
      ['Humidity from 70.0 to 85.0 %', ['yes', 'no', 'yes']],
    ]);
  });
});
