import { describe, expect, test } from 'vitest';
import { isGiven, restsOn, sourceOf, unsureAmong, type Footing } from '#shared-calc/bench/rests-on.ts';
import { demoOnce } from '#tests/demo-bench.ts';

const bench = demoOnce({ recipe: 'H1', sizes: ['T07'], job: { room_summer: '25 degC', kit: 'show' } });
const from = (line: string) => restsOn(bench, 'T07', line).map((each) => [each.line.name, each.from]);

describe('restsOn', () => {
  test('how many lift the glass rests on a guide figure from memory, and on no lamp', () => {
    expect(from('crew_empty')).toContainEqual(['lift_limit', 'memory']);
    expect(from('crew_empty').map(([name]) => name)).not.toContain('lamp_efficacy');
  });

  test('the heat in the tank rests on lamp figures from memory, and on the room as typed for the job', () => {
    expect(from('cool_enough')).toEqual(
      expect.arrayContaining([
        ['room_summer', 'job'],
        ['lamp_heat_share', 'memory'],
        ['species_ceiling', 'practice'],
        ['hottest_day', 'memory'],
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

describe('unsureAmong', () => {
  const names = (some: readonly Footing[]) => some.map(({ line }) => line.name);

  test('a figure typed for the job is without a source, a kit chosen for it is not', () => {
    const { memory, unsaid } = unsureAmong(restsOn(bench, 'T07', 'cool_enough'));

    expect(names(memory)).toContain('light_use');
    expect(names(unsaid)).toEqual(['room_summer']);
  });

  test('what the survey gave is not without a source', () => {
    const line = bench.box('T07', 'room_summer').line;
    const given = (['survey', 'published', 'house', 'none'] as const).map((each) => ({
      line,
      from: each,
      note: '',
    }));

    expect(unsureAmong(given).unsaid.map((each) => each.from)).toEqual(['none']);
    expect(unsureAmong(given).notAsked.map((each) => each.from)).toEqual(['published', 'house', 'none']);
  });
});

describe('sourceOf', () => {
  test('a figure typed over does not wear the mark of the one under it', () => {
    expect(sourceOf(bench, bench.box('T07', 'room_summer'))).toEqual({});
    expect(sourceOf(bench, bench.box('T07', 'room_winter'))).toMatchObject({ source: 'house' });
  });
});
