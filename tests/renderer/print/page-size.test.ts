import { describe, expect, test } from 'vitest';
import { pageSizeRule } from '#renderer/print/page-size.ts';

describe('pageSizeRule', () => {
  test("pages have the workshop's paper, and the printer's own while none is chosen", () => {
    expect([pageSizeRule('A4'), pageSizeRule('Letter'), pageSizeRule(undefined)]).toEqual([
      '@page { size: A4; } @page sideways { size: A4 landscape; }',
      '@page { size: Letter; } @page sideways { size: Letter landscape; }',
      '@page sideways { size: landscape; }',
    ]);
  });
});
