import { describe, expect, test } from 'vitest';
import { fillRightPlan, pastePlan } from '#renderer/bench/paste-plan.ts';

const extent = { rows: 6, columns: 4, heads: [] };
const rect = (top: number, left: number, bottom = top, right = left) => ({ top, left, bottom, right });
const told = (plan: readonly { readonly row: number; readonly column: number; readonly text: string }[]) =>
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
    expect(told(pastePlan(block, range, extent))).toBe(plan);
  });
});

describe('fillRightPlan', () => {
  const textAt = ({ row, column }: { readonly row: number; readonly column: number }) =>
    column < 1 ? undefined : `${row}.${column}`;
  test.each([
    ['the first box of each row goes over the rest', rect(1, 1, 2, 3), '1,2=1.1 1,3=1.1 2,2=2.1 2,3=2.1'],
    ['one size wide takes the box at its left', rect(1, 2), '1,2=1.1'],
    ['there is nothing left of the first size', rect(1, 1), ''],
  ])('%s', (_, range, plan) => {
    expect(told(fillRightPlan(range, textAt))).toBe(plan);
  });
});
