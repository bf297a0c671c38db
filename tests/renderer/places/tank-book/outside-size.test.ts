import { describe, expect, test } from 'vitest';
import {
  canBeMeasuredOutside,
  insideFrom,
  nothingOutside,
  outsideFaults,
  withInside,
} from '#renderer/places/tank-book/outside-size.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import type { Tank } from '#shared-calc/records/records.ts';
import { failed } from '#shared-calc/result.ts';

const outside = { ...nothingOutside, length: '912', depth: '457', height: '610', glass: '6', topFrame: '4' };
const tank: Tank = { id: 'T20', label: '', shape: 'cylinder', clientsOwn: false, note: '' };

function read(texts: typeof outside, shape: Tank['shape'] = 'rectangle') {
  const inside = insideFrom(texts, shape, plainDisplay);
  return inside.ok
    ? {
        mm: inside.value.measures.map(({ mm }) => mm),
        glass: [inside.value.glassMm, inside.value.baseGlassMm],
        warns: inside.value.measures.flatMap(({ warning }) => warning ?? []),
      }
    : inside.fault;
}

describe('insideFrom', () => {
  test('length and depth go through two panes, the height through the base alone', () => {
    expect(read(outside)).toEqual({ mm: [900, 445, 600], glass: [6, 6], warns: [] });
  });

  test('a thicker base takes more of the height, a seam of each pane, a frame of all', () => {
    expect(read({ ...outside, base: '10', seam: '1', sideFrame: '2' })).toEqual({
      mm: [896, 441, 595],
      glass: [6, 10],
      warns: [],
    });
  });

  test('inches go in as well', () => {
    expect(read({ ...outside, length: '36 in', depth: '18 in', height: '24 in', topFrame: '0' })).toEqual({
      mm: [902.4, 445.2, 603.6],
      glass: [6, 6],
      warns: [],
    });
  });

  test('a cylinder has a diameter and is as deep', () => {
    const inside = insideFrom({ ...outside, length: '410', depth: '' }, 'cylinder', plainDisplay);
    expect(inside.ok && withInside(tank, inside.value)).toEqual({
      ...tank,
      insideLengthMm: 398,
      insideDepthMm: 398,
      insideHeightMm: 600,
      glassMm: 6,
      baseGlassMm: 6,
    });
  });

  test('glass that leaves nothing is refused by its measure', () => {
    expect(insideFrom({ ...outside, length: '12' }, 'rectangle', plainDisplay)).toEqual(
      failed('Length: Glass and frame take 12 mm of 12 mm; nothing is left inside.'),
    );
  });

  test('a size that looks like an inside one already is looked at twice', () => {
    expect(read({ ...outside, length: '100' })).toEqual({
      mm: [88, 445, 600],
      glass: [6, 6],
      warns: ['Inside size is only 88 mm; is this already an inside size?'],
    });
  });
});

describe('outsideFaults', () => {
  test('each field says what is wrong with it, and an empty one nothing', () => {
    expect(outsideFaults({ ...nothingOutside, length: '9 L', glass: 'thick' }, plainDisplay)).toEqual({
      length: 'Outside length is in mm, a length; "9 L" does not fit.',
      glass: 'Glass: "thick" is not a figure.',
    });
  });
});

describe('canBeMeasuredOutside', () => {
  test('only shapes whose sides run through whole panes', () => {
    expect((['rectangle', 'bow', 'cylinder', 'corner', 'hexagon'] as const).map(canBeMeasuredOutside)).toEqual([
      true,
      true,
      true,
      false,
      false,
    ]);
  });
});
