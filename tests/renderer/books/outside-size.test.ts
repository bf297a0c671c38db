import { describe, expect, test } from 'vitest';
import {
  insideFrom,
  isBegun,
  nothingOutside,
  outsideFaults,
  outsideFields,
  withInside,
} from '#renderer/books/outside-size.ts';
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
    : { mm: inside.fault };
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

  // Worked by hand: 306.93 mm are 531.62 mm across the flats, less 2 x 6 mm 519.62 mm, which is 300 mm a side.
  test('a hexagon is taken across its flats', () => {
    const inside = insideFrom({ ...outside, length: '306.93', height: '456', topFrame: '' }, 'hexagon', plainDisplay);
    expect(inside.ok && inside.value.measures).toEqual([
      {
        key: 'insideLengthMm',
        mm: 300,
        working:
          'Side: 306.9\u00a0mm outside. Across the flats: 531.6\u00a0mm less 2 panes of 6\u00a0mm = 519.6\u00a0mm, a side of 300\u00a0mm',
        warning: undefined,
      },
      {
        key: 'insideHeightMm',
        mm: 450,
        working: 'Height: 456\u00a0mm less the base of 6\u00a0mm = 450\u00a0mm',
        warning: undefined,
      },
    ]);
  });

  // The cut edge stands at 45 degrees: 6 mm of glass take 6 x 1.4142 = 8.5 mm of the return.
  test('a corner loses two panes of its side, and of its return what the slanting front takes', () => {
    expect(read({ ...outside, length: '592', height: '610', sideReturn: '258.5' }, 'corner').mm).toEqual([
      580, 250, 600,
    ]);
  });

  test('a return that its front takes up is refused', () => {
    expect(insideFrom({ ...outside, sideReturn: '8' }, 'corner', plainDisplay)).toEqual(
      failed('Return: Glass and frame take 8.5 mm of 8 mm; nothing is left inside.'),
    );
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

describe('outsideFields', () => {
  test.each([
    ['rectangle', ['Length outside', 'Depth outside']],
    ['bow', ['Length outside', 'Depth outside']],
    ['cylinder', ['Diameter outside']],
    ['hexagon', ['Side outside']],
    ['corner', ['Side outside', 'Return outside']],
  ] as const)('a %s is measured by %j and its height', (shape, sides) => {
    expect(outsideFields(shape).map(([, label]) => label)).toEqual([
      ...sides,
      'Height outside',
      'Glass',
      'Base, if thicker',
      'Seam, each',
      'Frame, both sides',
      'Frame, top and foot',
    ]);
  });
});

describe('isBegun', () => {
  test('base, seam and frame may be left empty, what is asked besides may not', () => {
    const bare = { ...outside, seam: '', topFrame: '' };
    expect([isBegun(bare, 'rectangle'), isBegun({ ...bare, depth: '' }, 'hexagon'), isBegun(bare, 'corner')]).toEqual([
      true,
      true,
      false,
    ]);
  });
});
