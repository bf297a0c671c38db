import { expect, test } from 'vitest';
import { updatedEqualsFresh } from '#tests/derived-parts.ts';

test('after any of 60 runs of changes an updated derivation says the same as a fresh one', () => {
  expect.hasAssertions();
  updatedEqualsFresh(60);
});
