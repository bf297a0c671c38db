import type { Direction, Edge } from './selection.ts';

/** An action of a key press in a grid. */
export type KeyAct =
  | { readonly act: 'move'; readonly to: Direction; readonly jump: boolean; readonly extend: boolean }
  | { readonly act: 'edge'; readonly to: Edge; readonly extend: boolean }
  | { readonly act: 'next'; readonly back: boolean }
  /** `typed` replaces the cell's text; without it the cell opens with its text. */
  | { readonly act: 'write'; readonly typed?: string }
  | { readonly act: 'open'; readonly all: boolean }
  | { readonly act: 'clear' | 'fill right' | 'fill down' | 'add' | 'remove' | 'all' | 'back to one' };

export interface KeyPress {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
  readonly shiftKey: boolean;
  readonly isComposing: boolean;
}

const arrows: Readonly<Record<string, Direction>> = {
  ArrowUp: 'up',
  ArrowDown: 'down',
  ArrowLeft: 'left',
  ArrowRight: 'right',
};

/** Keys that belong to the whole page, also in a grid. */
const pageKeys = new Set(['/', '?']);

/** The action of a key press while no cell is open; `undefined` leaves the key to the page and the grid. */
export function keyAct(press: KeyPress): KeyAct | undefined {
  if (press.isComposing || press.altKey) return undefined;
  const strong = press.ctrlKey || press.metaKey;
  return moving(press, strong) ?? (strong ? withCtrl(press) : plain(press));
}

function moving({ key, shiftKey }: KeyPress, strong: boolean): KeyAct | undefined {
  const to = arrows[key];
  if (to) return { act: 'move', to, jump: strong, extend: shiftKey };
  if (key === 'Home') return { act: 'edge', to: strong ? 'first' : 'row start', extend: shiftKey };
  if (key === 'End') return { act: 'edge', to: strong ? 'last' : 'row end', extend: shiftKey };
  return undefined;
}

/** One letter, digit or sign; not the name of a key. */
function isLetter(key: string): boolean {
  return /^.$/u.test(key);
}

function withCtrl({ key, shiftKey }: KeyPress): KeyAct | undefined {
  return shiftKey ? undefined : withCtrlAlone[key.toLowerCase()];
}

const withCtrlAlone: Readonly<Record<string, KeyAct>> = {
  a: { act: 'all' },
  d: { act: 'fill down' },
  r: { act: 'fill right' },
  delete: { act: 'remove' },
};

function plain({ key, shiftKey }: KeyPress): KeyAct | undefined {
  switch (key) {
    case 'Tab':
      return { act: 'next', back: shiftKey };
    case 'Enter':
      return { act: 'open', all: shiftKey };
    case 'F2':
      return { act: 'write' };
    case 'Insert':
      return shiftKey ? undefined : { act: 'add' };
    default:
      return plainAlone[key] ?? written(key);
  }
}

const plainAlone: Readonly<Record<string, KeyAct>> = {
  Delete: { act: 'clear' },
  Backspace: { act: 'clear' },
  Escape: { act: 'back to one' },
};

function written(key: string): KeyAct | undefined {
  return isLetter(key) && key !== ' ' && !pageKeys.has(key) ? { act: 'write', typed: key } : undefined;
}
