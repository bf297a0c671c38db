import { describe, expect, test } from 'vitest';
import { sayOnPaper } from '#shared-calc/words/say-on-paper.ts';

describe('sayOnPaper', () => {
  test.each([
    ['It fills in 23.6\u00a0d.', 'It fills in 23.6\u00a0days.'],
    ['Leave it for 1\u00a0d, then rinse.', 'Leave it for 1\u00a0day, then rinse.'],
    ['Leave it for 21\u00a0d.', 'Leave it for 21\u00a0days.'],
    ['5\u00a0dishes at 20 degC', '5\u00a0dishes at 20\u00a0°C'],
  ])('%s', (sentence, read) => {
    expect(sayOnPaper(sentence)).toBe(read);
  });
});
