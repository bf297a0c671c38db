import { describe, expect, test } from 'vitest';
import { fieldOf } from '#shared-calc/fields/record-fields.ts';
import type { Tank } from '#shared-calc/records/records.ts';
import { isMeasured, tankMeasures } from '#shared-calc/records/tank-shape.ts';

describe('isMeasured', () => {
  test('each shape has its own measurements', () => {
    const own = (shape: Tank['shape']) =>
      tankMeasures.filter((key) => isMeasured(shape, key)).map((key) => fieldOf('tank', key)?.list);
    const all = ['height', 'dam', 'front vent', 'glass', 'base'];
    expect([own('rectangle'), own('bow'), own('corner'), own('hexagon')]).toEqual([
      ['length', 'depth', ...all],
      ['length', 'depth', 'height', 'bow', 'dam', 'front vent', 'glass', 'base'],
      ['length', 'height', 'return', 'dam', 'front vent', 'glass', 'base'],
      ['length', ...all],
    ]);
  });
});
