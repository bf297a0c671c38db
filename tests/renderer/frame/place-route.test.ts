import { describe, expect, test } from 'vitest';
import { readRoute, routeWithJob, writeRoute } from '#renderer/frame/place-route.ts';
import { places } from '#shared-calc/contract/places.ts';

describe('readRoute', () => {
  test.each([
    ['', { place: 'today', rest: [] }],
    ['#/quotes/Q-0027/A', { place: 'quotes', rest: ['Q-0027', 'A'] }],
    ['#quotes', { place: 'quotes', rest: [] }],
    ['#/function-book/loose_needed/', { place: 'function-book', rest: ['loose_needed'] }],
    ['#/nowhere/at/all', { place: 'today', rest: [] }],
    ['#/prepare/J02/cards/labels/TB-001', { place: 'cards', rest: ['J02', 'labels', 'TB-001'] }],
    ['#/prepare/cards', { place: 'cards', rest: [] }],
    ['#/prepare/J02/checks', { place: 'prepare', rest: ['J02', 'checks'] }],
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

describe('routeWithJob', () => {
  test.each([
    ['#/bench', '#/bench/J02'],
    ['#/bench/J01/litter_depth/T07', '#/bench/J02'],
    ['#/quotes/Q-0001A', '#/quotes/J02'],
    ['#/quotes/options', '#/quotes/options/J02'],
    ['#/needs/J01', '#/needs/J02'],
    ['#/prepare/J01/checks/T07', '#/prepare/J02/checks'],
    ['#/prepare', '#/prepare/J02'],
    ['#/cards/J01/build', '#/cards/J02/build'],
    ['#/jobs/J01/survey', '#/jobs/J02/survey'],
    ['#/measures/J01/T07, dam', '#/measures/J02'],
    ['#/measures', undefined],
    ['#/store/M01', undefined],
    ['#/cultures', undefined],
  ])('%s with another job is %s', (from, to) => {
    expect(routeWithJob(readRoute(from), 'J01', 'J02')).toBe(to);
  });
});
