import { describe, expect, test } from 'vitest';
import { dailyLight } from '#shared-calc/trade/air-and-light/daily-light.ts';

describe('daily light = PPFD x hours x 0.0036', () => {
  test.each([
    { source: 'Faust, Light Management', ppfd: 38.1, hours: 12, mol: 1.64592 },
    { source: 'worked from the identity', ppfd: 1, hours: 24, mol: 0.0864 },
    { source: 'worked from the identity', ppfd: 50, hours: 12, mol: 2.16 },
    { source: 'worked from the identity', ppfd: 100, hours: 10, mol: 3.6 },
    { source: 'worked from the identity', ppfd: 100, hours: 12, mol: 4.32 },
    { source: 'worked from the identity', ppfd: 150, hours: 14, mol: 7.56 },
  ])('$ppfd umol/m2/s for $hours h are $mol mol ($source)', ({ ppfd, hours, mol }) => {
    expect(lightOf(ppfd, hours)).toBeCloseTo(mol, 9);
  });

  // quoted on the help page of an instrument seller
  test('Faust prints 1.6 for the first', () => {
    expect(lightOf(38.1, 12)).toBeCloseTo(1.6, 1);
  });

  // worked from the identity, the other way round
  test.each([
    { mol: 4, ppfd: 92.59 },
    { mol: 6, ppfd: 138.89 },
  ])('$mol mol in 12 h need $ppfd umol/m2/s', ({ mol, ppfd }) => {
    expect(mol / lightOf(1, 12)).toBeCloseTo(ppfd, 2);
  });
});

/** All of a lamp's light on one square metre: its output is then the PPFD. */
function lightOf(ppfd: number, hours: number): number {
  return Number(dailyLight.compute([ppfd, 1, 1, 1, hours]));
}
