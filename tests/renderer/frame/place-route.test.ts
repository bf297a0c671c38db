import { describe, expect, test } from 'vitest';
import { readRoute, writeRoute } from '#renderer/frame/place-route.ts';
import { places } from '#shared-calc/contract/places.ts';

describe('readRoute', () => {
  test.each([
    ['', { place: 'bench', rest: [] }],
    ['#/quotes/Q-0027/A', { place: 'quotes', rest: ['Q-0027', 'A'] }],
    ['#quotes', { place: 'quotes', rest: [] }],
    ['#/function-book/loose_needed/', { place: 'function-book', rest: ['loose_needed'] }],
    ['#/nowhere/at/all', { place: 'bench', rest: [] }],
    ['#/store/%E0%A4%A', { place: 'store', rest: ['%E0%A4%A'] }],
  ])('%s', (hash, route) => {
    expect(readRoute(hash)).toEqual(route);
  });
});

describe('writeRoute', () => {
  test('every place is found again by its link, with whatever stands behind it', () => {
    const back = places.map(({ id }) => readRoute(writeRoute(id, 'T07#2', 'a/b')));
    expect(back).toEqual(places.map(({ id }) => ({ place: id, rest: ['T07#2', 'a/b'] })));
  });
});
