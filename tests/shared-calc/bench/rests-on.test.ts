import { describe, expect, test } from 'vitest';
import { houseSource, isGiven, restsOn } from '#shared-calc/bench/rests-on.ts';
import { demoOnce } from '#tests/demo-bench.ts';

const bench = demoOnce({ recipe: 'H1', sizes: ['T07'], job: { room_summer: '25 degC' } });
const from = (line: string) =>
  restsOn(bench, 'T07', line).map((each) => [each.line.name, each.source ?? 'none', each.writtenOver]);

describe('restsOn', () => {
  test('one person lifts the glass by the tank’s mass, the top frame and a guide figure from memory', () => {
    expect(from('crew_empty')).toContainEqual(['lift_limit', 'memory', false]);
    expect(from('crew_empty').map(([name]) => name)).not.toContain('lamp_efficacy');
  });

  test('the heat in the tank rests on lamp figures from memory, and on the room as typed for the job', () => {
    const rests = from('cool_enough');

    expect(rests).toEqual(
      expect.arrayContaining([
        ['room_summer', 'none', true],
        ['lamp_heat_share', 'memory', false],
        ['species_ceiling', 'practice', false],
        ['hottest_day', 'memory', false],
      ]),
    );
  });

  test('they stand in the order of the recipe, each once', () => {
    const order = bench.input().lines.map(({ name }) => name);
    const names = restsOn(bench, 'T07', 'cool_enough').map(({ line }) => line.name);

    expect(names).toEqual(order.filter((name) => names.includes(name)));
  });

  test('what is measured in the tank book is no figure of the house', () => {
    expect(from('floor_area')).toEqual([]);
    expect(isGiven(bench.box('T07', 'inside_length'))).toBe(false);
  });
});

describe('houseSource', () => {
  test('a figure typed over does not wear the mark of the one under it', () => {
    expect(houseSource(bench.box('T07', 'room_summer'))).toEqual({});
    expect(houseSource(bench.box('T07', 'room_winter'))).toMatchObject({ source: 'house' });
  });
});
