import { describe, expect, test } from 'vitest';
import { animalChecks, type Room } from '#shared-calc/jobs/animal-checks.ts';
import { plainDisplay, type Display } from '#shared-calc/quantity/shown-unit.ts';
import type { SizeAnimals } from '#shared-calc/recipe/column.ts';
import type { AnimalKind } from '#shared-calc/records/records.ts';
import { demoRecords } from '#tests/demo-bench.ts';

function frog(figures: Partial<AnimalKind> = {}): AnimalKind {
  const kind = demoRecords().animalKind.get('A1');
  if (!kind) throw new Error('no frog');
  return { ...kind, ...figures };
}

/** T07 inside: 0.4005 m2 and 600 mm. */
const t07: Room = { floorM2: 0.4005, heightMm: 600 };

function statesOf(animals: SizeAnimals, room = t07) {
  return animalChecks(animals, room, plainDisplay).map(({ use, level, state }) => `${use} ${level} ${state}`);
}

function saidOf(animals: SizeAnimals, room = t07, display: Display = plainDisplay) {
  return animalChecks(animals, room, display).map(({ says }) => says.replaceAll('\u00a0', ' '));
}

describe('animalChecks', () => {
  test('a size with no kind says so plainly', () => {
    expect([statesOf({}), saidOf({ count: 3 })]).toEqual([
      ['animalKind watch not known yet'],
      ["No kind named: ceiling, floor and band are the house's. Whether it crushes small plants is not known yet."],
    ]);
  });

  test('plants only have no animals to mind', () => {
    expect(statesOf({ count: 0 })).toEqual([]);
  });

  test('four small bold frogs in T07', () => {
    expect(statesOf({ kind: frog(), count: 4 })).toEqual([
      'animalKind watch holds',
      'animalRoom stop holds',
      'animalGroup watch holds',
    ]);
    expect(saidOf({ kind: frog(), count: 4 })).toEqual([
      'Small bold frog: its own ceiling, act-from temperature, floor and humidity.',
      'Small bold frog wants 0.2 m2 of floor and 350 mm of height; this tank has 0.4005 m2 of floor and 600 mm of height inside.',
      '4 of Small bold frog go in; 2 to 6 are kept together.',
    ]);
  });

  test.each<[string, Room, number, readonly string[]]>([
    ['too little floor', { ...t07, floorM2: 0.19 }, 4, ['animalRoom stop fails', 'animalGroup watch holds']],
    ['too low', { ...t07, heightMm: 349 }, 4, ['animalRoom stop fails', 'animalGroup watch holds']],
    ['just enough', { floorM2: 0.2, heightMm: 350 }, 6, ['animalRoom stop holds', 'animalGroup watch holds']],
    ['one alone', t07, 1, ['animalRoom stop holds', 'animalGroup watch fails']],
    ['seven', t07, 7, ['animalRoom stop holds', 'animalGroup watch fails']],
    [
      'a tank not measured',
      { floorM2: undefined, heightMm: 600 },
      4,
      ['animalRoom watch not known yet', 'animalGroup watch holds'],
    ],
  ])('%s', (_, room, count, states) => {
    expect(statesOf({ kind: frog(), count }, room).slice(1)).toEqual(states);
  });

  test('what nobody has said or written down is not known yet, never held', () => {
    const bare = frog({ ceiling: undefined, bandLow: undefined, leastFloor: undefined, groupMost: undefined });

    expect(statesOf({ kind: bare })).toEqual([
      'animalKind watch not known yet',
      'animalRoom watch not known yet',
      'animalGroup watch not known yet',
    ]);
    expect([saidOf({ kind: bare })[0], saidOf({ kind: bare, count: 4 })[2]]).toEqual([
      "Not in the animal book for Small bold frog: ceiling, humidity from. The house's stand in their place.",
      'How many of Small bold frog are kept together is not known yet. Ask the keeper.',
    ]);
  });

  test('the room is said in the units of the workshop, and a keeper decides', () => {
    const inInches: Display = { ...plainDisplay, unitsShown: { length: 'in', area: 'ft2' } };
    const checks = animalChecks({ kind: frog(), count: 4 }, t07, inInches);

    expect(saidOf({ kind: frog(), count: 4 }, t07, inInches)[1]).toMatch(
      /wants 2\.15 ft2 of floor and 13\.78 in of height/,
    );
    expect(new Set(checks.map(({ decides }) => decides))).toEqual(new Set(['Experienced keeper']));
  });
});
