import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { audienceRules, peopleNear, protectedKinds } from '#shared-calc/papers/audience-rules.ts';

const lead = 'School or centre health lead, public-health guidance';

function saysOf(audience: string): readonly string[] {
  return audienceRules({ audience }).map(({ says }) => says.slice(0, 24));
}

describe('audienceRules', () => {
  test.each([
    ['Nursery class, three mornings', ['Under-fives come here: r', 'Carriers look healthy: e']],
    ['children under 5', ['Under-fives come here: r', 'Carriers look healthy: e']],
    ['Hospital waiting room', ['People with weak immunit', 'Carriers look healthy: e']],
    ['care home, residents', ['People over 65 come here', 'Carriers look healthy: e']],
    ['Passengers of all ages', ['Under-fives come here: r', 'People over 65 come here', 'Carriers look healthy: e']],
    ['office staff', ['Carriers look healthy: e']],
    ['', ['Nobody has written down ']],
  ])('%s', (audience, says) => {
    expect(saysOf(audience)).toEqual(says);
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
  test.each([
    ['Small frogs, one kind', 2],
    ['dwarf geckos', 2],
    ['frogs, later a gecko', 3],
    ['isopods', 1],
  ])('%s: reminded of permits, and of whom to ask', (animals, count) => {
    const reminders = protectedKinds({ animals });
    expect([reminders.length, reminders.at(-1)?.decides]).toEqual([count, 'Wildlife authority']);
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
