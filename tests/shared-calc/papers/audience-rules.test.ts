import { describe, expect, test } from 'vitest';
import { unasked } from '#shared-calc/fields/survey.ts';
import { peopleNear, protectedKinds } from '#shared-calc/papers/audience-rules.ts';

const sentences = {
  children: 'Children under five come near it: reptiles and amphibians should not be kept where they are.',
  weak: 'People over 65 or with weak immunity come near it: they keep away from the animals, the tank and its water.',
  childrenUnasked: 'Nobody has asked whether children under five come near it. Ask the client.',
  weakUnasked: 'Nobody has asked whether people over 65 or with weak immunity come near it. Ask the client.',
} as const;

describe('peopleNear', () => {
  test.each([
    ['not asked', 'not asked', ['childrenUnasked', 'weakUnasked']],
    ['yes', 'not asked', ['children', 'weakUnasked']],
    ['no', 'yes', ['weak']],
    ['no', 'no', []],
  ] as const)('children under five %s, weak immunity %s', (underFives, weakImmunity, words) => {
    const reminders = peopleNear({ survey: { ...unasked, underFives, weakImmunity } });
    expect(reminders).toEqual(
      words.map((word) => ({
        says: sentences[word],
        decides: 'School or centre health lead, public-health guidance',
      })),
    );
  });
});

describe('protectedKinds', () => {
  test('whatever the animals, the wildlife authority is asked', () => {
    expect(protectedKinds.map(({ decides }) => decides)).toEqual(['Wildlife authority']);
  });
});
