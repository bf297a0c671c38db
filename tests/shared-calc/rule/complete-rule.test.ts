import { describe, expect, test } from 'vitest';
import { completeRule } from '#shared-calc/rule/complete-rule.ts';
import { someScope } from './some-scope.ts';

/** Completes at the mark `|`: the text with the first offer inserted, and the first few offers. */
function complete(marked: string) {
  const cursor = marked.indexOf('|');
  const text = marked.replace('|', '');
  const { from, to, options } = completeRule(text, cursor, someScope);
  const [first] = options;
  return {
    becomes: first ? text.slice(0, from) + first.text + text.slice(to) : undefined,
    first: options.slice(0, 3).map(({ label }) => label),
  };
}

describe('completeRule', () => {
  test.each([
    ['drai|', 'drainage', ['drainage', 'drainage_placed', 'drain_room']],
    ['soil_gross - bea|', 'soil_gross - bead_width', ['bead_width', 'bead_volume', 'edge_bead']],
    ['lay|', 'layer_volume(', ['layer_volume']],
    ['max(dam_h|eight, 3)', 'max(dam_height, 3)', ['dam_height']],
    ['layer_volume(|', 'layer_volume(floor_area', ['floor_area', 'wall_area', 'panel_area']],
    ['layer_volume(floor_area, |', 'layer_volume(floor_area, dam_height', ['dam_height', 'drainage', 'capping']],
    ['layer_volume(floor_area; |', 'layer_volume(floor_area; dam_height', ['dam_height', 'drainage', 'capping']],
    ['layer_volume(floor_area;dam|', 'layer_volume(floor_area;dam_height', ['dam_height', 'dam_room']],
    ['tank_floor_area(|', 'tank_floor_area(tank_shape', ['tank_shape', 'not_worked_yet', 'dam_height']],
    ['|', 'dam_height', ['dam_height', 'drainage', 'capping']],
    ['if(client_tank, ye|', 'if(client_tank, yes', ['yes', 'not_worked_yet', 'layer_volume']],
  ])('offers lines and functions, what fits first: %s', (marked, becomes, first) => {
    expect(complete(marked)).toEqual({ becomes, first });
  });

  test.each([
    ['40 m|', '40 m', ['m', 'mm', 'mi']],
    ['40mm|', '40mm', ['mm', 'mm2']],
    ['max(drainage; 40 m|', 'max(drainage; 40 m', ['m', 'mm', 'mi']],
    ['12 g/|', '12 g/mm', ['mm', 'cm', 'm']],
    ['12 min/m|2', '12 min/m', ['m', 'mm', 'mi']],
    ['drainage + 40 k|', 'drainage + 40 km', ['km', 'kg', 'kPa']],
    ['12 L/drai|', '12 L/drainage', ['drainage', 'drainage_placed', 'drain_room']],
    ['40|', undefined, []],
  ])('offers units after a number: %s', (marked, becomes, first) => {
    expect(complete(marked)).toEqual({ becomes, first });
  });

  test.each([
    ['kit = "|', 'kit = "basic"', ['basic', 'full', 'show']],
    ['kit = "f|"', 'kit = "full"', ['full']],
    ['kit = "f|oo" + 1', 'kit = "full" + 1', ['full']],
    ['pick(kit, "basic", 1, "|', 'pick(kit, "basic", 1, "basic"', ['basic', 'full', 'show']],
    ['pick(kit, "basic", 1, "sh|", 2)', 'pick(kit, "basic", 1, "show", 2)', ['show']],
    ['pick(kit; "basic"; 1; "sh|"; 2)', 'pick(kit; "basic"; 1; "show"; 2)', ['show']],
    [
      'bead_volume(perimeter, 20 mm, 20 mm, "|',
      'bead_volume(perimeter, 20 mm, 20 mm, "triangle"',
      ['triangle', 'fillet'],
    ],
    ['drainage = "|', undefined, []],
    ['kit = "full"|', undefined, []],
  ])('offers the words of the choice within quotes: %s', (marked, becomes, first) => {
    expect(complete(marked)).toEqual({ becomes, first });
  });

  test.each([['drainage |'], ['drainage| + 2'], ['(1)|'], ['12 %|']])('offers nothing but what fits: %s', (marked) => {
    const { becomes } = complete(marked);
    expect([undefined, 'drainage + 2', '12 %']).toContain(becomes);
  });
});
