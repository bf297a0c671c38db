import { describe, expect, test } from 'vitest';
import { keyAct } from '#renderer/grid/grid-keys.ts';

const bare = { code: '', ctrlKey: false, metaKey: false, altKey: false, shiftKey: false, isComposing: false };
const ctrl = { ctrlKey: true };
const shift = { shiftKey: true };

describe('keyAct', () => {
  test.each([
    ['ArrowDown', {}, { act: 'move', to: 'down', jump: false, extend: false }],
    ['ArrowRight', shift, { act: 'move', to: 'right', jump: false, extend: true }],
    ['ArrowUp', { ...ctrl, ...shift }, { act: 'move', to: 'up', jump: true, extend: true }],
    ['ArrowLeft', { metaKey: true }, { act: 'move', to: 'left', jump: true, extend: false }],
    ['Home', {}, { act: 'edge', to: 'row start', extend: false }],
    ['End', ctrl, { act: 'edge', to: 'last', extend: false }],
    ['Home', { ...ctrl, ...shift }, { act: 'edge', to: 'first', extend: true }],
    ['Tab', shift, { act: 'leave', back: true }],
    ['Enter', {}, { act: 'open', all: false }],
    ['F2', {}, { act: 'write' }],
    ['Delete', {}, { act: 'clear' }],
    ['Backspace', {}, { act: 'clear' }],
    ['Escape', {}, { act: 'back to one' }],
    ['ArrowDown', { altKey: true }, { act: 'pick' }],
    ['ArrowRight', { ...shift, altKey: true }, { act: 'same right' }],
    ['ArrowDown', { ...shift, altKey: true }, { act: 'same below' }],
    ['Ç', { ...shift, altKey: true, code: 'KeyC' }, { act: 'copy with names' }],
    ['Å', { ...shift, altKey: true, code: 'KeyA' }, { act: 'add range' }],
    [' ', shift, { act: 'whole rows' }],
    [' ', ctrl, { act: 'whole columns' }],
    ['ContextMenu', {}, { act: 'menu' }],
    ['F10', shift, { act: 'menu' }],
    ['Insert', {}, { act: 'add' }],
    ['Delete', ctrl, { act: 'remove' }],
    ['A', ctrl, { act: 'all' }],
    ['7', {}, { act: 'write', typed: '7' }],
    ['D', shift, { act: 'write', typed: 'D' }],
    ['½', {}, { act: 'write', typed: '½' }],
  ])('%s with %o', (key, held, act) => {
    expect(keyAct({ ...bare, key, ...held })).toEqual(act);
  });

  test.each<[string, Partial<typeof bare>, string]>([
    ['/', {}, 'finds a line'],
    ['?', shift, 'belongs to the page'],
    [' ', {}, 'writes nothing'],
    ['F8', {}, 'goes to the next flag'],
    ['PageDown', {}, 'is the grid’s own'],
    ['c', ctrl, 'is the clipboard’s'],
    ['z', ctrl, 'is undo'],
    ['r', ctrl, 'loads the page again'],
    ['d', ctrl, 'is the browser’s bookmark'],
    ['ArrowRight', { altKey: true }, 'goes forward in the browser'],
    ['R', { ...ctrl, ...shift }, 'is the browser’s'],
    ['Insert', shift, 'pastes'],
    ['d', { altKey: true }, 'is the browser’s'],
    ['e', { isComposing: true }, 'is still being composed'],
  ])('%s with %o is left alone: it %s', (key, held) => {
    expect(keyAct({ ...bare, key, ...held })).toBeUndefined();
  });
});
