import { describe, expect, test } from 'vitest';
import { unasked } from '#shared-calc/fields/survey.ts';
import { peopleNear, protectedKinds } from '#shared-calc/papers/audience-rules.ts';

describe('peopleNear', () => {
  test.each([
    ['not asked', 'not asked', ['underFivesNotAsked', 'weakImmunityNotAsked']],
    ['yes', 'not asked', ['underFivesHere', 'weakImmunityNotAsked']],
    ['no', 'yes', ['weakImmunityHere']],
    ['no', 'no', []],
  ] as const)('children under five %s, weak immunity %s', (underFives, weakImmunity, ids) => {
    const reminders = peopleNear({ survey: { ...unasked, underFives, weakImmunity } });
    expect(reminders.map(({ id }) => id)).toEqual(ids);
    expect(new Set(reminders.map(({ decides }) => decides)).size).toBeLessThan(2);
  });
});

describe('protectedKinds', () => {
  test('whatever the animals, the wildlife authority is asked', () => {
    expect(protectedKinds([]).map(({ decides }) => decides)).toEqual(['Wildlife authority']);
  });
});
