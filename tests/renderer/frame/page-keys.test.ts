import { describe, expect, test } from 'vitest';
import { pageAct } from '#renderer/frame/page-keys.ts';

const bare = { ctrlKey: false, metaKey: false, altKey: false, shiftKey: false, inField: false };

describe('pageAct', () => {
  test.each([
    ['/', {}, 'find'],
    ['F1', {}, 'help'],
    ['F6', {}, 'next part'],
    ['F6', { shiftKey: true }, 'part before'],
    ['F7', { inField: true }, 'next moved'],
    ['F7', { shiftKey: true }, 'moved before'],
    ['F8', { inField: true }, 'next flag'],
    ['F8', { shiftKey: true }, 'flag before'],
    ['z', { ctrlKey: true }, 'undo'],
    ['Z', { ctrlKey: true, shiftKey: true }, 'redo'],
    ['y', { ctrlKey: true }, 'redo'],
    ['z', { metaKey: true }, 'undo'],
    ['/', { inField: true }, undefined],
    ['z', { ctrlKey: true, inField: true }, undefined],
    ['a', {}, undefined],
    ['F8', { altKey: true }, undefined],
  ])('%s with %o', (key, held, act) => {
    expect(pageAct({ ...bare, key, ...held })).toBe(act);
  });
});
