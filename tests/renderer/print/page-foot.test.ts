import { describe, expect, test } from 'vitest';
import { footRule } from '#renderer/print/page-foot.ts';

describe('footRule', () => {
  test('the words stand at the left of each page, its number at the right', () => {
    const rule = footRule('Quote Q-0027, revision A');
    expect([
      rule.includes('content: "Quote Q-0027, revision A";'),
      rule.includes('counter(page) " of " counter(pages)'),
    ]).toEqual([true, true]);
  });

  test('words from outside cannot leave their quotes', () => {
    const rule = footRule('Order to "A\\" } @import url(x);\nB');
    expect(rule).toContain('content: "Order to \\22 A\\5c \\22  } @import url(x);\\a B";');
  });
});
