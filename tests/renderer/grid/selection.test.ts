import { describe, expect, test } from 'vitest';
import {
  addedTo,
  atEdge,
  edgesOf,
  holds,
  isSingle,
  rangesOf,
  rectOf,
  single,
  stepped,
  tabbed,
  whole,
  within,
} from '#renderer/grid/selection.ts';
import type { Direction, Edge, Extent } from '#renderer/grid/selection.ts';

/** Ten rows with sections at 0 and 4 and the foot from 8; the names and three sizes. */
const extent: Extent = { rows: 10, columns: 4, stops: [0, 4, 8] };
const at = (row: number, column: number) => ({ row, column });

describe('stepped', () => {
  test.each<[string, Direction, boolean, [number, number], [number, number]]>([
    ['up', 'up', false, [5, 2], [4, 2]],
    ['down', 'down', false, [5, 2], [6, 2]],
    ['left onto the names', 'left', false, [5, 1], [5, 0]],
    ['right', 'right', false, [5, 2], [5, 3]],
    ['not past the top', 'up', false, [0, 2], [0, 2]],
    ['not past the foot', 'down', false, [9, 2], [9, 2]],
    ['not past the last size', 'right', false, [5, 3], [5, 3]],
    ['up to the section', 'up', true, [6, 2], [4, 2]],
    ['up to the section before', 'up', true, [4, 2], [0, 2]],
    ['down to the next section', 'down', true, [1, 2], [4, 2]],
    ['down to the foot', 'down', true, [5, 2], [8, 2]],
    ['down to the last sum', 'down', true, [8, 2], [9, 2]],
    ['to the first size', 'left', true, [5, 3], [5, 1]],
    ['from the first size to the names', 'left', true, [5, 1], [5, 0]],
    ['to the last size', 'right', true, [5, 1], [5, 3]],
  ])('%s', (...[, direction, jump, from, to]) => {
    expect(stepped(extent, at(...from), direction, jump)).toEqual(at(...to));
  });
});

describe('atEdge', () => {
  test.each<[Edge, [number, number]]>([
    ['row start', [5, 1]],
    ['row end', [5, 3]],
    ['first', [0, 1]],
    ['last', [9, 3]],
  ])('%s', (edge, to) => {
    expect(atEdge(extent, at(5, 2), edge)).toEqual(at(...to));
  });

  test('with no size taken there is only the name', () => {
    expect(atEdge({ ...extent, columns: 1 }, at(5, 0), 'row start')).toEqual(at(5, 0));
  });
});

describe('tabbed', () => {
  test.each<[string, boolean, [number, number], [number, number] | undefined]>([
    ['along the row', false, [5, 1], [5, 2]],
    ['on to the next row', false, [5, 3], [6, 1]],
    ['back along the row', true, [5, 2], [5, 1]],
    ['back to the row before', true, [5, 1], [4, 3]],
    ['out after the last box', false, [9, 3], undefined],
    ['out before the first box', true, [0, 1], undefined],
    ['from a name to its first box', false, [5, 0], [5, 1]],
  ])('%s', (_, back, from, to) => {
    expect(tabbed(extent, at(...from), back)).toEqual(to && at(...to));
  });
});

describe('rectOf', () => {
  test('a selection drawn upward and leftward is the same boxes as one drawn the other way', () => {
    const range = { anchor: at(6, 3), tip: at(4, 1) };
    expect(rectOf(range)).toEqual(rectOf({ anchor: range.tip, tip: range.anchor }));
    expect(rectOf(range)).toEqual({ top: 4, bottom: 6, left: 1, right: 3 });
  });
});

describe('holds', () => {
  test('corners are inside, what is next to them is not', () => {
    const rect = { top: 4, bottom: 6, left: 1, right: 3 };
    expect([holds(rect, at(4, 1)), holds(rect, at(6, 3)), holds(rect, at(7, 3)), holds(rect, at(4, 0))]).toEqual([
      true,
      true,
      false,
      false,
    ]);
  });
});

describe('isSingle', () => {
  test('one box is a selection of one', () => {
    expect([isSingle(single(at(1, 1))), isSingle({ anchor: at(1, 1), tip: at(1, 2) })]).toEqual([true, false]);
  });
});

describe('within', () => {
  test('a selection past what is left is drawn in', () => {
    expect(within({ rows: 3, columns: 2, stops: [] }, { anchor: at(1, 1), tip: at(9, 3) })).toEqual({
      anchor: at(1, 1),
      tip: at(2, 1),
    });
  });
});

describe('several ranges', () => {
  const six: Extent = { rows: 6, columns: 5, stops: [] };
  const rect = (top: number, left: number, bottom = top, right = left) => ({ top, left, bottom, right });

  test('a further cell begins another range, and is let go by the same press', () => {
    const two = addedTo({ anchor: at(0, 1), tip: at(1, 2) }, at(4, 3));
    expect([rangesOf(two), rangesOf(addedTo(two, at(4, 3)))]).toEqual([
      [rect(0, 1, 1, 2), rect(4, 3)],
      [rect(0, 1, 1, 2)],
    ]);
  });

  test('one cell alone is not let go', () => {
    expect(addedTo(single(at(2, 2)), at(2, 2))).toEqual(single(at(2, 2)));
  });

  test('a range within another is not one of its own', () => {
    expect(rangesOf({ ...single(at(1, 1)), others: [rect(0, 1, 3, 2)] })).toEqual([rect(0, 1, 3, 2)]);
  });

  test('whole rows and columns leave the heads out and the cell where it is', () => {
    const range = { anchor: at(1, 2), tip: at(2, 3) };
    expect([whole(six, range, 'rows'), whole(six, range, 'columns')]).toEqual([
      { ...single(at(2, 3)), others: [rect(1, 1, 2, 4)] },
      { ...single(at(2, 3)), others: [rect(0, 2, 5, 3)] },
    ]);
  });

  test('its edge runs around all of it, and not between ranges that touch', () => {
    const ranges = [rect(0, 1, 1, 1), rect(0, 2)];
    expect([edgesOf(ranges, at(0, 1)), edgesOf(ranges, at(0, 2)), edgesOf(ranges, at(1, 2))]).toEqual([
      ['top', 'left'],
      ['top', 'bottom', 'right'],
      undefined,
    ]);
  });

  test('ranges past the cells there are go', () => {
    expect(within(six, { ...single(at(1, 1)), others: [rect(4, 3, 8, 9), rect(7, 1)] })).toEqual({
      ...single(at(1, 1)),
      others: [rect(4, 3, 5, 4)],
    });
  });
});
