import { describe, expect, test } from 'vitest';
import { sayKind, type Kind } from '#shared-calc/quantity/kind.ts';
import { checkRule } from '#shared-calc/rule/check-rule.ts';
import { readRule } from '#shared-calc/rule/read-rule.ts';
import { someScope } from './some-scope.ts';

function check(text: string) {
  const rule = readRule(text);
  if (!rule.ok) throw new Error(`${text}: ${JSON.stringify(rule.fault)}`);
  return checkRule(rule.value, someScope);
}

function say(kind: Kind | undefined): string {
  if (!kind) return 'open';
  return kind.is === 'choice' ? `choice of ${(kind.options ?? []).join(' ')}` : sayKind(kind);
}

/** Every fault as its kind and the words it points at. */
function faults(text: string): readonly string[] {
  return check(text).faults.map(({ kind, from, to }) => `${kind}: ${text.slice(from, to)}`);
}

describe('checkRule', () => {
  test.each([
    ['clamp(round_to(0.27 * dam_height, 5 mm), 20 mm, 50 mm)', 'length'],
    ['layer_volume(floor_area, capping) + edge_bead', 'volume'],
    ['bead_volume(perimeter, bead_width, 20 mm)', 'volume'],
    ['dam_room(dam_height, drainage, mesh_thickness, capping, freeboard)', 'length'],
    ['sloped_volume(tank_shape, inside_length, inside_depth, front_bow, side_return, soil_front, soil_rise)', 'volume'],
    ['if(panel_buried, panel_width * 20 mm * (soil_front + soil_rise), 0 L)', 'volume'],
    ['soil_gross - edge_bead - soil_buried - 0 L', 'volume'],
    ['mix_loose / (1 - blend_shrink)', 'volume'],
    ['mix_part(mix_loose, coir_parts, mix_parts, blend_shrink)', 'volume'],
    ['litter_dry / floor_area / leaf_sheet', 'number'],
    ['pick(kit, "basic", 10 each/m2, "full", 15 each/m2, "show", 25 each/m2)', 'count per area'],
    ['max(1, round(hardscape_rate / 2 * floor_area, 0))', 'number'],
    ['roundup(panel_area * (1 + panel_waste) / panel_size, 0)', 'number'],
    ['branches_need + tubes_need + pods_need / 5', 'number'],
    ['if(panel_area > 0 m2, panel_sealant_run(panel_width, inside_height, 80 mm), 0 m)', 'length'],
    ['plant_count(pick(kit, "basic", 2 each/m2, "full", 4 each/m2, "show", 6 each/m2), floor_area, 1)', 'count'],
    ['plant_count(pick(kit, "basic", 3 each/m, "full", 5 each/m, "show", 8 each/m), overall_length, 1)', 'count'],
    ['seed_count(springtail_target, springtail_capacity, springtail_rate, settle_in) * floor_area', 'number'],
    [
      '(front_strip_area(tank_shape, inside_length, inside_depth, front_bow, side_return, cover_vent) + front_vent * inside_length) / floor_area',
      'number',
    ],
    ['vapour_loss(air_volume, air_changes, tank_air, tank_humidity, room_summer, humidity_summer)', 'flow'],
    ['if(outside_length >= 900 mm, 900 mm, if(outside_length >= 600 mm, 600 mm, 300 mm))', 'length'],
    ['pick(lamp_length, 300 mm, 12 W, 450 mm, 18 W, 600 mm, 24 W, 900 mm, 36 W)', 'power'],
    ['daily_light(lamp_power * lamp_efficacy, light_use, 90 %, floor_area, light_hours)', 'light per area'],
    ['light_warming(lamps * lamp_power, 35 %, glass_area, heat_passage)', 'temperature step'],
    ['room_summer + light_warming_up', 'temperature'],
    ['if(kit = "basic", 0, roundup(overall_length / 450 mm, 0))', 'number'],
    ['pick(kit, "basic", "none", "full", "tube", "show", "tap")', 'choice of none tube tap'],
    ['(coir_parts * 0.08 kg/L + bark_parts * 0.2 kg/L) / mix_parts / (1 - blend_shrink) / (1 - mix_settle)', 'density'],
    ['soil_placed * (mix_dry + moisture_target * 1 kg/L)', 'mass'],
    ['10 min + 12 min/m2 * glass_area', 'time'],
    ['if(crew_empty = 1, 0 min, 60 min * max(1, crew_empty - 1))', 'time'],
    ['delivery_distance * trips', 'length'],
    ['mesh_upturn <= capping + max(0 mm, soil_front)', 'yes_no'],
    ['or(hottest_day <= species_ceiling - 1 K, hottest_day > species_ceiling)', 'yes_no'],
    ['or(drain_access <> "none", drain_days >= 3650 d)', 'yes_no'],
    ['or(nozzles = 0, mist_cut_off, reservoir <= drain_room)', 'yes_no'],
    ['filled_mass <= shelf_rating * shelf_share', 'yes_no'],
    ['tank_shape = "rectangle"', 'yes_no'],
    ['soil_rise / overall_length <= 0.55', 'yes_no'],
  ])('passes a rule of the house: %s', (text, kind) => {
    const { kind: found, faults: none } = check(text);
    expect([say(found), none]).toEqual([kind, []]);
  });

  test.each([
    ['12 % + 3 %', 'share'],
    ['12 % + 0.03', 'number'],
    ['2 each + 3 each', 'count'],
    ['2 each * 5 %', 'number'],
    ['50 % * 50 %', 'share'],
    ['35 % / 5 %', 'number'],
    ['-(2 each)', 'count'],
    ['26 degC - 20 degC', 'temperature step'],
    ['26 degC - 3 K', 'temperature'],
    ['3 K + 26 degC', 'temperature'],
    ['max(room_summer, 20 degC)', 'temperature'],
    ['clamp(room_summer, 18 degC, 27 degC)', 'temperature'],
    ['round_to(room_summer, 1 K)', 'temperature'],
    ['-5 degC', 'temperature'],
    ['abs(-3 K)', 'temperature step'],
    ['floor_area ^ 2', 'length^4'],
    ['drainage ^ -1 * drainage', 'number'],
    ['power(drainage, 3)', 'volume'],
    ['sqrt(floor_area)', 'length'],
    ['1.5 ^ vent_share', 'number'],
    ['sqrt(2)', 'number'],
    ['sqrt(4 each/m2/m2)', 'count per area'],
    ['mod(900 mm, 450 mm)', 'length'],
    ['round(2.5)', 'number'],
    ['round(7 each / 1, 0)', 'number'],
    ['round(7 each)', 'count'],
    ['ceiling(7, 2, 1)', 'number'],
    ['pi()', 'number'],
    ['exp(vent_share)', 'number'],
    ['yes = not(no)', 'yes_no'],
    ['if(client_tank, "a", "b")', 'choice of a b'],
    ['if(client_tank, yes, no)', 'yes_no'],
    ['loose_needed(5 L, 0.02, 3 %)', 'volume'],
    ['bead_volume(perimeter, bead_width, 20 mm, "fillet")', 'volume'],
    ['plant_count(4 each/m2, not_worked_yet, 0)', 'open'],
    ['not_worked_yet + 3 mm', 'open'],
    ['not_worked_yet = 3', 'yes_no'],
  ])('knows what %s is: %s', (text, kind) => {
    const { kind: found, faults: none } = check(text);
    expect([say(found), none]).toEqual([kind, []]);
  });

  test.each([
    ['soil_gross + drainage', ['cannot-join: soil_gross + drainage']],
    ['max(0, drainage)', ['branches-differ: drainage']],
    ['drainage > 40', ['cannot-join: drainage > 40']],
    ['room_summer + species_ceiling', ['cannot-join: room_summer + species_ceiling']],
    ['3 K - 26 degC', ['cannot-join: 3 K - 26 degC']],
    ['hottest_day <= 3 K', ['cannot-join: hottest_day <= 3 K']],
    ['if(client_tank, 20 degC, 3 K)', ['branches-differ: 3 K']],
    ['2 * room_summer', ['reading-alone: room_summer']],
    ['room_summer ^ 2', ['reading-alone: room_summer']],
    ['-room_summer', ['reading-alone: -room_summer']],
    ['sum(room_summer, 3 K)', ['reading-alone: room_summer']],
    ['abs(room_summer)', ['reading-alone: room_summer']],
    ['round_to(room_summer, 5 degC)', ['reading-alone: 5 degC']],
    ['sqrt(soil_gross)', ['bad-root: soil_gross']],
    ['floor_area ^ 0.5', ['bad-power: 0.5']],
    ['drainage ^ coir_parts', ['bad-power: coir_parts']],
    ['2 ^ drainage', ['bad-power: drainage']],
    ['round(drainage, 0)', ['rounds-plain-only: drainage']],
    ['roundup(drainage / 5 mm, 1 mm)', ['needs-plain: 1 mm']],
    ['exp(drainage)', ['needs-plain: drainage']],
    ['mod(drainage, 5)', ['branches-differ: 5']],
    ['if(drainage, 1, 2)', ['needs-yes-no: drainage']],
    ['and(yes, kit)', ['needs-yes-no: kit']],
    ['kit + 1', ['needs-figure: kit']],
    ['-client_tank', ['needs-figure: -client_tank']],
    ['max(kit, 1)', ['needs-figure: kit']],
    ['kit < "full"', ['cannot-join: kit < "full"']],
    ['yes > no', ['cannot-join: yes > no']],
    ['kit = yes', ['cannot-join: kit = yes']],
    ['kit = "ful"', ['not-an-option: "ful"']],
    ['("shwo") <> kit', ['not-an-option: "shwo"']],
    ['pick(kit, "basic", 1, "ful", 2)', ['not-an-option: "ful"']],
    ['pick(kit, 300 mm, 1)', ['branches-differ: 300 mm']],
    ['pick(lamp_length, 300, 12 W)', ['branches-differ: 300']],
    ['pick(kit, "basic", 12 W, "full", 18 mm)', ['branches-differ: 18 mm']],
    ['pick(kit, "basic", 1, "full")', ['too-few: pick(kit, "basic", 1, "full")']],
    ['if(yes, 1)', ['too-few: if(yes, 1)']],
    ['round(1, 2, 3)', ['too-many: 3']],
    ['pi(3)', ['too-many: 3']],
    ['layer_volume(floor_area)', ['too-few: layer_volume(floor_area)']],
    ['layer_volume(floor_area, 40 mm, 1, 2)', ['too-many: 1, 2']],
    ['layer_volume(floor_area, 40 L)', ['wrong-argument: 40 L']],
    ['layer_volume(kit, "deep")', ['wrong-argument: kit', 'wrong-argument: "deep"']],
    ['vapour_loss(air_volume, air_changes, 24 K, 90 %, room_summer, 60 %)', ['wrong-argument: 24 K']],
    ['bead_volume(perimeter, bead_width, 20 mm, "filet")', ['not-an-option: "filet"']],
    ['tank_floor_area(kit, 1 mm, 1 mm, 1 mm, 1 mm)', ['wrong-argument: kit']],
    ['plant_count(4 each/m2, drainage, 0)', ['arguments-disagree: plant_count(4 each/m2, drainage, 0)']],
    ['plant_count("full", drainage, 0)', ['needs-figure: "full"']],
    ['dam_hieght - 5 mm', ['unknown-name: dam_hieght']],
    ['layer_volum(floor_area, 40 mm)', ['unknown-function: layer_volum']],
    ['layer_volume + 1 L', ['not-a-call: layer_volume']],
    ['min + 1', ['not-a-call: min']],
    [
      'dam_hieght + layer_volume(floor_area, 40 L) + kit',
      ['unknown-name: dam_hieght', 'wrong-argument: 40 L', 'needs-figure: kit'],
    ],
  ])('refuses %s at its place', (text, found) => {
    expect(faults(text)).toEqual(found);
  });

  test('offers the nearest name for one that is not known', () => {
    expect(check('dam_hieght').faults).toEqual([
      { kind: 'unknown-name', name: 'dam_hieght', near: 'dam_height', from: 0, to: 10 },
    ]);
    expect(check('Layer_Volume(floor_area, 4 mm)').faults).toEqual([
      { kind: 'unknown-function', name: 'Layer_Volume', near: 'layer_volume', from: 0, to: 12 },
    ]);
    expect(check('a1').faults).toEqual([{ kind: 'unknown-name', name: 'a1', from: 0, to: 2 }]);
  });

  test('checks the longest rules without trouble', () => {
    expect(check('1+'.repeat(999) + '1').faults).toEqual([]);
  });
});
