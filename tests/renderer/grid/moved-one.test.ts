import { expect, test } from 'vitest';
import { movedOne } from '#renderer/grid/moved-one.ts';

test.each([
  ['to the right', 'abcd', 'bcad', { key: 'a', to: 2 }],
  ['to the left', 'abcd', 'adbc', { key: 'd', to: 1 }],
  ['past its neighbour', 'abcd', 'acbd', { key: 'c', to: 1 }],
  ['nowhere', 'abcd', 'abcd', undefined],
  ['with others', 'abcd', 'dcba', undefined],
])('one that is moved %s is found', (_, before, after, moved) => {
  expect(movedOne(before.split(''), after.split(''))).toEqual(moved);
});
