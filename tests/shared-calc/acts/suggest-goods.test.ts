import { expect, test } from 'vitest';
import { goodsSuggester } from '#shared-calc/acts/suggest-goods.ts';
import { demoRecords } from '#tests/demo-bench.ts';

test.each([
  ['Bark, fine, bagged', 'M06'],
  ['Seed pods (mixed)', 'M18'],
  ['COIR BLOCK', 'M05'],
  ['Fence post, oak', undefined],
  ['', undefined],
])('%j is suggested to be %s', (words, id) => {
  expect(goodsSuggester(demoRecords().material.values())(words)?.id).toBe(id);
});
