import { expect, test } from 'vitest';
import { fittingOptions } from '#renderer/kit/pick-field.tsx';

const options = [
  { value: 'T01', label: 'Rectangle 300 × 300 × 300' },
  { value: 'T11', label: 'Hexagon, side 300, height 450' },
  { value: 'H1', label: 'Tall rectangle' },
];

test.each([
  ['', ['T01', 'T11', 'H1']],
  ['t1', ['T11']],
  ['hex', ['T11']],
  ['h', ['H1', 'T11']],
  ['300 rect', ['T01']],
  ['pentagon', []],
])('"%s" finds by code first, then by words of the name in any order', (text, found) => {
  expect(fittingOptions(options, text).map(({ value }) => value)).toEqual(found);
});
