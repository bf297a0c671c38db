import { describe, expect, test } from 'vitest';
import { bookKey } from '#renderer/books/book-keys.ts';
import type { Range } from '#renderer/bench/range.ts';

const extent = { rows: 12, columns: 5, heads: [] };
const at: Range = { anchor: { row: 3, column: 2 }, tip: { row: 3, column: 2 } };
const press = (key: string, held: { readonly ctrlKey?: boolean; readonly shiftKey?: boolean } = {}) =>
  bookKey(
    { key, ctrlKey: false, metaKey: false, altKey: false, shiftKey: false, isComposing: false, ...held },
    at,
    extent,
  );
const one = (row: number, column: number) => ({ is: 'take', range: { anchor: { row, column }, tip: { row, column } } });

describe('bookKey', () => {
  test.each([
    ['ArrowDown', one(4, 2)],
    ['ArrowLeft', one(3, 1)],
    ['Home', one(3, 1)],
    ['End', one(3, 4)],
    ['Tab', one(3, 3)],
    ['Enter', { is: 'write' }],
    ['F2', { is: 'write' }],
    ['9', { is: 'write', typed: '9' }],
    ['Delete', { is: 'clear' }],
    ['Insert', { is: 'add' }],
    ['F8', undefined],
    ['/', undefined],
  ])('%s', (key, asked) => {
    expect(press(key)).toEqual(asked);
  });

  test('with Ctrl and Shift', () => {
    expect([
      press('Delete', { ctrlKey: true }),
      press('End', { ctrlKey: true }),
      press('ArrowRight', { shiftKey: true }),
      press('a', { ctrlKey: true }),
      press('r', { ctrlKey: true }),
      press('d', { ctrlKey: true }),
      press('c', { ctrlKey: true }),
    ]).toEqual([
      { is: 'remove' },
      one(11, 4),
      { is: 'take', range: { anchor: { row: 3, column: 2 }, tip: { row: 3, column: 3 } } },
      { is: 'take', range: { anchor: { row: 0, column: 1 }, tip: { row: 11, column: 4 } } },
      { is: 'fill right' },
      { is: 'fill down' },
      undefined,
    ]);
  });
});
