import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';

import { z } from 'zod';

const WindowState = z.strictObject({
  x: z.int(),
  y: z.int(),
  width: z.int().min(1),
  height: z.int().min(1),
  maximised: z.boolean(),
});
export type WindowState = z.infer<typeof WindowState>;

export interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const usual = { width: 1440, height: 900 };
const least = { width: 640, height: 480 };
/** This much of the window's top must be on a screen, so that the user can drag it, px. */
const grip = 80;

/** The window's last position if a screen still shows it; otherwise the usual size in the middle. */
export function placeWindow(
  last: WindowState | undefined,
  screens: readonly Area[],
): Partial<Area> & Pick<Area, 'width' | 'height'> {
  if (!last) return usual;
  const width = Math.max(last.width, least.width);
  const height = Math.max(last.height, least.height);
  const place = { x: last.x, y: last.y, width, height };
  return screens.some((screen) => canBeHeld(place, screen)) ? place : { width, height };
}

function canBeHeld(window: Area, screen: Area): boolean {
  const across = Math.min(window.x + window.width, screen.x + screen.width) - Math.max(window.x, screen.x);
  return across >= grip && window.y >= screen.y && window.y <= screen.y + screen.height - grip;
}

export function readWindowState(file: string): WindowState | undefined {
  try {
    return WindowState.safeParse(JSON.parse(readFileSync(file, 'utf8'))).data;
  } catch {
    // Missing or invalid: the usual position is used.
    return undefined;
  }
}

export function writeWindowState(file: string, state: WindowState): void {
  try {
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, JSON.stringify(state));
  } catch {
    // The next window opens at its usual position.
  }
}
