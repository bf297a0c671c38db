import { describe, expect, test } from 'vitest';
import { tankFigures } from '#shared-calc/recipe/tank-figures.ts';
import { Tank } from '#shared-calc/records/records.ts';
import { demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();
const measurements = [...records.line.values()]
  .filter((line) => line.recipe === 'H1' && line.role === 'tank')
  .map((line) => line.name);

function bare(shape: Tank['shape'], more: Partial<Tank> = {}): Tank {
  return Tank.parse({ id: 'T99', label: 'New', shape, clientsOwn: false, note: '', ...more });
}

describe('tankFigures', () => {
  test.each([...records.tank.values()])('$id has every measurement that a recipe asks for', (tank) => {
    const figures = tankFigures(tank);
    expect(measurements.filter((name) => (figures.get(name) ?? '') === '')).toEqual([]);
  });

  test('a tank with nothing measured leaves every box empty but what its shape does not have', () => {
    expect(Object.fromEntries(tankFigures(bare('rectangle')))).toEqual({
      tank_shape: 'rectangle',
      inside_length: '',
      inside_depth: '',
      inside_height: '',
      front_bow: '0 mm',
      side_return: '0 mm',
      dam_height: '',
      front_vent: '',
      glass: '',
      base_glass: '',
    });
  });

  test.each(['hexagon', 'corner', 'cylinder'] as const)('a %s is as deep as it is long', (shape) => {
    expect(tankFigures(bare(shape, { insideLengthMm: 400 })).get('inside_depth')).toBe('400 mm');
  });

  test('a bow without its bow, and a corner without its return, wait to be measured', () => {
    expect(tankFigures(bare('bow')).get('front_bow')).toBe('');
    expect(tankFigures(bare('corner')).get('side_return')).toBe('');
  });

  test('a figure of zero is measured', () => {
    expect(tankFigures(bare('rectangle', { frontVentMm: 0 })).get('front_vent')).toBe('0 mm');
  });
});
