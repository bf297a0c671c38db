import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

import { placeWindow, readWindowState, writeWindowState } from '#electron/main/window-state.ts';
import { temporaryFolder } from '#tests/electron/host/host-at-hand.ts';

const screen = { x: 0, y: 0, width: 1920, height: 1080 };
const last = { x: 100, y: 80, width: 1200, height: 800, maximised: false };

describe('placeWindow', () => {
  test.each([
    ['never open before: the usual size', undefined, [screen], { width: 1440, height: 900 }],
    ['where it was', last, [screen], { x: 100, y: 80, width: 1200, height: 800 }],
    ['its screen is gone: its size, in the middle', { ...last, x: 2500 }, [screen], { width: 1200, height: 800 }],
    ['its title would be above the screen', { ...last, y: -300 }, [screen], { width: 1200, height: 800 }],
    ['its title would be below the screen', { ...last, y: 1050 }, [screen], { width: 1200, height: 800 }],
    [
      'on a second screen at the left',
      { ...last, x: -1800 },
      [screen, { ...screen, x: -1920 }],
      { x: -1800, y: 80, width: 1200, height: 800 },
    ],
    ['too small to use', { ...last, width: 10, height: 10 }, [screen], { x: 100, y: 80, width: 640, height: 480 }],
  ])('%s', (_, state, screens, place) => {
    expect(placeWindow(state, screens)).toEqual(place);
  });
});

describe('readWindowState', () => {
  test('what was written is read again', () => {
    const file = join(temporaryFolder(), 'kept here', 'window.json');
    writeWindowState(file, last);

    expect(readWindowState(file)).toEqual(last);
  });

  test.each(['', '{}', '[]', '{"x":"left"}', '{"x":0,"y":0,"width":0,"height":0,"maximised":false}'])(
    '%j is none',
    (text) => {
      const file = join(temporaryFolder(), 'window.json');
      writeFileSync(file, text);

      expect(readWindowState(file)).toBeUndefined();
    },
  );
});
