import { describe, expect, test } from 'vitest';
import { cellsOfRanges, fillPlan, pastePlan, sayLeft } from '#renderer/grid/paste-plan.ts';

const extent = { rows: 6, columns: 4, stops: [] };
const rect = (top: number, left: number, bottom = top, right = left) => ({ top, left, bottom, right });
const written = (plan: readonly { readonly row: number; readonly column: number; readonly text: string }[]) =>
  plan.map(({ row, column, text }) => `${row},${column}=${text}`).join(' ');

describe('pastePlan', () => {
  test.each([
    ['one box fills the range', [['9']], rect(1, 1, 2, 2), '1,1=9 1,2=9 2,1=9 2,2=9'],
    [
      'a block goes down and right from the first box',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
      rect(1, 1),
      '1,1=a 1,2=b 2,1=c 2,2=d',
    ],
    ['a row is laid over every row of the range', [['a', 'b']], rect(1, 1, 2, 2), '1,1=a 1,2=b 2,1=a 2,2=b'],
    [
      'a column is laid over every size of the range',
      [['a'], ['b']],
      rect(1, 1, 2, 3),
      '1,1=a 1,2=a 1,3=a 2,1=b 2,2=b 2,3=b',
    ],
    ['a range that is no whole number of blocks takes one', [['a', 'b']], rect(1, 1, 1, 3), '1,1=a 1,2=b'],
    ['what lies past the edge is left out', [['a', 'b', 'c']], rect(5, 3), '5,3=a'],
    ['rows of unlike length', [['a', 'b'], ['c']], rect(1, 1), '1,1=a 1,2=b 2,1=c'],
    ['nothing', [], rect(1, 1), ''],
  ])('%s', (_, block, range, plan) => {
    expect(written(pastePlan(block, range, extent).texts)).toBe(plan);
  });
});

describe('what of a pasted block does not fit', () => {
  const block = (rows: number, columns: number) =>
    Array.from({ length: rows }, () => Array.from({ length: columns }, () => 'a'));
  test.each([
    [block(2, 2), rect(1, 1), undefined],
    [block(4, 1), rect(3, 1), '1 row of what was pasted does not fit here.'],
    [block(8, 6), rect(0, 0), '2 rows and 2 columns of what was pasted do not fit here.'],
    [block(1, 5), rect(0, 1), '2 columns of what was pasted do not fit here.'],
  ])('is counted and said', (pasted, range, says) => {
    expect(sayLeft(pastePlan(pasted, range, extent).left)).toBe(says);
  });
});

describe('cellsOfRanges', () => {
  test('a cell that lies in two ranges is one cell', () => {
    expect(cellsOfRanges([rect(0, 0, 1, 1), rect(1, 1, 2, 1)])).toHaveLength(5);
  });
});

describe('fillPlan', () => {
  const textOf = ({ row, column }: { readonly row: number; readonly column: number }) => `${row}.${column}`;
  test.each([
    ['the first box of each row goes over the rest', 'right', rect(1, 1, 2, 3), '1,2=1.1 1,3=1.1 2,2=2.1 2,3=2.1'],
    ['one size wide takes the box at its left', 'right', rect(1, 2), '1,2=1.1'],
    ['there is nothing left of the first size', 'right', rect(1, 1), ''],
    ['names go into no box', 'right', rect(1, 0, 1, 2), ''],
    ['the first line goes into those below it', 'down', rect(1, 1, 3, 2), '2,1=1.1 2,2=1.2 3,1=1.1 3,2=1.2'],
    ['there is nothing below one line', 'down', rect(1, 1, 1, 2), ''],
  ] as const)('%s', (_, to, range, plan) => {
    expect(written(fillPlan(range, { to, fromBeside: true, textOf }))).toBe(plan);
  });

  test('within the selection alone, one column is left as it is', () => {
    const parts = { to: 'right', fromBeside: false, textOf } as const;
    expect([written(fillPlan(rect(1, 2), parts)), written(fillPlan(rect(1, 2, 1, 3), parts))]).toEqual(['', '1,3=1.2']);
  });
});
