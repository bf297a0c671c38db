import { describe, expect, test } from 'vitest';

import { readAnswer } from '#shared-calc/contract/read-answer.ts';

const senseless = {
  ok: false,
  fault: { says: 'The program gave an answer that makes no sense.', readAgain: true },
};

describe('readAnswer', () => {
  test('an answer and a refusal come through as they were given', () => {
    const refusal = { ok: false, fault: { says: 'There is no job J77.', readAgain: false } };

    expect(readAnswer('file.recent', { ok: true, value: { books: [] } })).toEqual({
      ok: true,
      value: { books: [] },
    });
    expect(readAnswer('file.recent', refusal)).toEqual(refusal);
  });

  test.each([
    undefined,
    null,
    'text',
    {},
    { ok: true },
    { ok: true, value: {} },
    { ok: true, value: { paths: [7] } },
    { ok: true, value: { paths: [], more: 1 } },
    { ok: false, fault: 'a sentence alone' },
    { ok: 'yes', value: { books: [] } },
  ])('%j makes no sense', (data) => {
    expect(readAnswer('file.recent', data)).toEqual(senseless);
  });
});
