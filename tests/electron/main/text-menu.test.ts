import { describe, expect, test, vi } from 'vitest';

vi.mock('electron', () => import('./stand-in-shell.ts'));
const { textMenuOf } = await import('#electron/main/text-menu.ts');

describe('the menu of a text', () => {
  test.each([
    ['a field has all acts on a text', { isEditable: true, selectionText: '' }, ['cut', 'copy', 'paste', 'selectAll']],
    ['marked words are copied', { isEditable: false, selectionText: 'Litter' }, ['copy']],
    ['elsewhere there is none: the page has its own', { isEditable: false, selectionText: ' ' }, []],
  ])('%s', (_, params, roles) => {
    expect(textMenuOf(params).flatMap(({ role }) => role ?? [])).toEqual(roles);
  });
});
