import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { audienceRules, peopleNear, protectedKinds } from '#shared-calc/papers/audience-rules.ts';

const lead = 'School or centre health lead, public-health office';

/** The words of the tables below. */
const sentences = {
  unknown: 'Nobody has written down who is near the tank: ask for under-fives, people over 65 and weak immunity.',
  small: 'Under-fives come here: reptiles and amphibians should not be kept with them, nor in childcare rooms.',
  weak: 'People with weak immunity may come here: they keep away from the animals, the tank and its water.',
  old: 'People over 65 come here: they are at greater risk; no hands in the tank.',
  always: 'Carriers look healthy: everybody washes their hands after any contact with the tank or its water.',
  frogs: 'Most poison-frog kinds are listed: they need permits and proof of breeding.',
  geckos: 'Some dwarf geckos and other reptiles are on the strictest list.',
  ask: 'Before animals are bought, moved or given away ask the wildlife authority; local invasive-species and disease rules too. Keep the papers of where they come from.',
} as const;

type Words = readonly (keyof typeof sentences)[];

describe('audienceRules', () => {
  test.each<readonly [string, Words]>([
    ['Nursery class, three mornings', ['small', 'always']],
    ['children under 5', ['small', 'always']],
    ['Hospital waiting room', ['weak', 'always']],
    ['care home, residents', ['old', 'always']],
    ['Passengers of all ages', ['small', 'old', 'always']],
    ['children’s ward of the hospital, under-fives', ['small', 'weak', 'always']],
    ['office staff', ['always']],
    ['', ['unknown']],
    ['  ', ['unknown']],
  ])('%s', (audience, words) => {
    expect(audienceRules({ audience }).map((each) => each.says)).toEqual(words.map((word) => sentences[word]));
  });

  test('the health lead decides, never the program', () => {
    fc.assert(
      fc.property(fc.string(), (audience) => {
        const rules = audienceRules({ audience });
        expect(rules.length).toBeGreaterThan(0);
        expect(rules.every(({ decides }) => decides === lead)).toBe(true);
      }),
    );
  });
});

describe('peopleNear', () => {
  test.each([
    ['Nursery class', 1],
    ['office staff', 0],
    ['', 1],
  ])('"%s": the general rule is left to the caution that says it', (audience, count) => {
    const says = peopleNear({ audience }).map((each) => each.says);
    expect([says.length, says.filter((each) => each.startsWith('Carriers'))]).toEqual([count, []]);
  });
});

describe('protectedKinds', () => {
  test.each<readonly [string, Words]>([
    ['Small frogs, one kind', ['frogs', 'ask']],
    ['fire salamander', ['frogs', 'ask']],
    ['dwarf geckos', ['geckos', 'ask']],
    ['frogs, later a gecko', ['frogs', 'geckos', 'ask']],
    ['isopods', ['ask']],
    ['', ['ask']],
  ])('%s: reminded of permits, and of whom to ask', (animals, words) => {
    expect(protectedKinds({ animals }).map(({ says, decides }) => ({ says, decides }))).toEqual(
      words.map((word) => ({ says: sentences[word], decides: 'Wildlife authority' })),
    );
  });

  test('whatever is wanted, it never says that something is legal or allowed', () => {
    fc.assert(
      fc.property(fc.string(), (animals) => {
        const words = protectedKinds({ animals }).map(({ says }) => says);
        expect(words.join(' ')).not.toMatch(/legal|lawful|allowed|permitted|licen[cs]ed|safe/i);
      }),
    );
  });
});
