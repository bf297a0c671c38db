import { describe, expect, test } from 'vitest';
import { kindOfUnit } from '#shared-calc/quantity/kind.ts';
import { checkLineKind } from '#shared-calc/rule/check-line-kind.ts';
import { checkRule } from '#shared-calc/rule/check-rule.ts';
import { readRule } from '#shared-calc/rule/read-rule.ts';
import { sayRuleFault } from '#shared-calc/words/say-rule-fault.ts';
import { someScope } from '#tests/shared-calc/rule/some-scope.ts';

function say(text: string): readonly string[] {
  const rule = readRule(text);
  const faults = rule.ok ? checkRule(rule.value, someScope).faults : [rule.fault];
  return faults.map((fault) => sayRuleFault(fault, text));
}

describe('sayRuleFault', () => {
  test.each([
    ['dam_hieght', 'Nothing called dam_hieght. Did you mean dam_height?'],
    ['what_is_this', 'Nothing called what_is_this. Look in the list of lines.'],
    ['drainage + mm', 'mm is a unit; it goes straight after a number, as in 12 mm.'],
    ['layer_volum(floor_area, 4 mm)', 'No function is called layer_volum. Did you mean layer_volume?'],
    ['layer_volume', 'layer_volume is a function; write its figures in brackets behind it, as in layer_volume(...).'],
    ['layer_volume(floor_area, 40 L)', 'DEPTH needs a length (mm, cm, in). You gave 40 L.'],
    ['layer_volume(drainage, 4 mm)', 'AREA needs an area (m2, cm2, in2). You gave drainage, a length.'],
    ['loose_needed(3 L, kit, 5 %)', 'SETTLE needs a share (%). You gave kit, a choice.'],
    ['loose_needed(drainage, 0.1, 5 %)', 'PLACED needs a volume (L, mL, gal). You gave drainage, a length.'],
    [
      'vapour_loss(air_volume, air_changes, 24 K, 90 %, room_summer, 60 %)',
      'INSIDE needs a temperature (degC, degF). You gave 24 K.',
    ],
    [
      'bead_volume(perimeter, 2 mm, 2 mm, drainage)',
      'PROFILE needs one of "triangle", "fillet". You gave drainage, a length.',
    ],
    ['kit = "ful"', '"ful" is none of the choices "basic", "full", "show". Did you mean "full"?'],
    ['kit = "extra"', '"extra" is none of the choices "basic", "full", "show".'],
    ['layer_volume(floor_area)', 'layer_volume takes 2 figures; you gave 1.'],
    ['round(1, 2, 3)', 'round takes 1 to 2 figures; you gave 3.'],
    ['max()', 'max takes at least 1 figure; you gave 0.'],
    ['pi(1)', 'pi takes no figures; you gave 1.'],
    ['pick(kit, "basic", 1, "full")', 'pick takes at least 5 figures; you gave 4.'],
    [
      'plant_count(4 each/m2, drainage, 0)',
      'plant_count cannot work with a count per square metre and millimetres and a plain number together. Look it up in the Function book.',
    ],
  ])('of the names and calls in %s: %s', (text, sentence) => {
    expect(say(text)).toEqual([sentence]);
  });

  test.each([
    [
      'soil_gross + drainage',
      'Litres plus millimetres cannot be added. In soil_gross + drainage, both sides must be of one kind.',
    ],
    [
      'drainage - 3',
      'A plain number cannot be taken from millimetres. In drainage - 3, give the plain figure its unit.',
    ],
    [
      'drainage > floor_area',
      'Millimetres cannot be compared with square metres. In drainage > floor_area, both sides must be of one kind.',
    ],
    [
      'room_summer + species_ceiling',
      'A temperature plus a temperature cannot be added. In room_summer + species_ceiling, write a step in K, such as 2 K.',
    ],
    [
      'hottest_day > 3 K',
      'A temperature cannot be compared with a step of temperature. In hottest_day > 3 K, a temperature is in degC and a step in K.',
    ],
    ['kit < "full"', 'A choice cannot be compared with a choice. In kit < "full", write = or <> for <.'],
    [
      '2 * room_summer',
      'room_summer is a temperature and cannot be multiplied. Take the difference of two temperatures, or a step in K.',
    ],
    [
      'sum(room_summer, 1 K)',
      'room_summer is a temperature and cannot be added up. Take the difference of two temperatures, or a step in K.',
    ],
    [
      '-room_summer',
      '-room_summer is a temperature and cannot be turned round by a sign. Take the difference of two temperatures, or a step in K.',
    ],
    ['drainage ^ 0.5', '0.5 cannot be a power here; a figure with a unit takes a whole number, as in ^ 2.'],
    ['sqrt(soil_gross)', 'soil_gross is a volume and has no square root; an area has one, a length.'],
    [
      'round(drainage, 0)',
      'round rounds plain figures; drainage is a length. Use round_to with a step, as in round_to(drainage, 1 mm).',
    ],
    ['exp(drainage)', 'exp takes plain figures; drainage is a length. Divide it by one of its unit first.'],
    ['if(drainage, 1, 2)', 'if asks for a yes or no, such as drainage > 40 mm. You gave drainage, a length.'],
    ['kit + 1', 'This works with figures. kit is a choice; use if(...) or pick(...) to turn it into one.'],
    ['max(0, drainage)', 'max needs figures of one kind, not a plain number with millimetres. Change drainage.'],
  ])('of the kinds in %s: %s', (text, sentence) => {
    expect(say(text)).toEqual([sentence]);
  });

  test.each([
    ['', 'There is no rule here yet; write a figure or a rule, such as 40 mm or soil_gross - edge_bead.'],
    ['=1+1', 'A rule has no = in front; leave it out.'],
    ['a +', 'The rule stops too early: a figure, a line or a function is missing at the end.'],
    ['a + )', 'A figure, a line or a function should stand where ) is.'],
    ['(a', 'The rule stops too early: a closing bracket is missing at the end.'],
    ['a)', 'There is a closing bracket too many; take one out.'],
    ['12,5 mm', 'A comma parts the figures of a function; inside a rule the decimal sign is a point, as in 12.5 mm.'],
    ['a b', 'A sign such as + or the end should stand where b is.'],
    ['12;5', 'A ; parts the figures of a function; inside a rule the decimal sign is a point, as in 12.5 mm.'],
    ['a ~ b', '~ has no meaning in a rule; take it out.'],
    ['kit = "full', 'The words in quotes are not closed; put a " behind the last of them.'],
    ['26 c', 'Nothing called c is a unit. Did you mean degC?'],
    ['3 drainage', 'Nothing called drainage is a unit. Put a sign such as * between a number and a name.'],
    ['1e999', '1e999 is too large a number to work with.'],
    ['('.repeat(70), 'The rule goes more than 60 levels deep. Put part of it in a line of its own.'],
    ['1+'.repeat(1000) + '1', 'The rule has 2001 characters; 2000 is the most. Put part of it in a line of its own.'],
  ])('of what cannot be read in %j: %s', (text, sentence) => {
    expect(say(text)).toEqual([sentence]);
  });

  test('of a long piece by its two ends', () => {
    const piece = 'drainage + drainage + drainage + drainage + drainage + drain ... drainage + drainage';
    expect(say(`exp(${'drainage + '.repeat(12)}drainage)`)).toEqual([
      `exp takes plain figures; ${piece} is a length. Divide it by one of its unit first.`,
    ]);
  });

  test('of a rule that does not suit its line', () => {
    const fault = checkLineKind({ from: 0, to: 4 }, kindOfUnit('L'), 'mm');
    expect(fault && sayRuleFault(fault, '40 L')).toBe('This line is a length in mm. 40 L is a volume.');
  });
});
