import type { Direction, Edge } from './selection.ts';

/** An action of a key press in a grid. */
export type KeyAct =
  | { readonly act: 'move'; readonly to: Direction; readonly jump: boolean; readonly extend: boolean }
  | { readonly act: 'edge'; readonly to: Edge; readonly extend: boolean }
  /** Out of the grid, to what stands behind or before it. */
  | { readonly act: 'leave'; readonly back: boolean }
  /** `typed` replaces the cell's text; without it the cell opens with its text. */
  | { readonly act: 'write'; readonly typed?: string }
  | { readonly act: 'open'; readonly all: boolean }
  /** Opens the cell with its list or its calendar. */
  | { readonly act: 'pick' }
  | { readonly act: 'clear' | 'same right' | 'same below' | 'add' | 'remove' | 'copy with names' | 'menu' }
  /** What is chosen stays, and another range begins. */
  | { readonly act: 'add range' }
  | { readonly act: 'all' | 'whole rows' | 'whole columns' | 'back to one' };

export interface KeyPress {
  readonly key: string;
  /** The key by its place: `KeyC`. */
  readonly code: string;
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
  if (press.isComposing) return undefined;
  if (press.altKey) return withAlt(press);
  const strong = press.ctrlKey || press.metaKey;
  return moving(press, strong) ?? (strong ? withCtrl(press) : plain(press));
}

/** Alt with Shift: keys that neither browsers nor the usual desktops take. */
function withAlt({ key, code, shiftKey, ctrlKey, metaKey }: KeyPress): KeyAct | undefined {
  if (ctrlKey || metaKey) return undefined;
  if (!shiftKey) return key === 'ArrowDown' ? { act: 'pick' } : undefined;
  // On a Mac the letter comes as what Option makes of it.
  return withAltShift[code.startsWith('Key') ? code : key];
}

const withAltShift: Readonly<Record<string, KeyAct>> = {
  ArrowRight: { act: 'same right' },
  ArrowDown: { act: 'same below' },
  KeyC: { act: 'copy with names' },
  KeyA: { act: 'add range' },
};

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
  ' ': { act: 'whole columns' },
  delete: { act: 'remove' },
};

function plain({ key, shiftKey }: KeyPress): KeyAct | undefined {
  if (key === 'Tab') return { act: 'leave', back: shiftKey };
  if (key === 'Enter') return { act: 'open', all: shiftKey };
  return (shiftKey ? withShiftAlone : plainAlone)[key] ?? eitherWay[key] ?? written(key);
}

const withShiftAlone: Readonly<Record<string, KeyAct>> = {
  ' ': { act: 'whole rows' },
  F10: { act: 'menu' },
};

const plainAlone: Readonly<Record<string, KeyAct>> = {
  Insert: { act: 'add' },
};

const eitherWay: Readonly<Record<string, KeyAct>> = {
  F2: { act: 'write' },
  Delete: { act: 'clear' },
  Backspace: { act: 'clear' },
  Escape: { act: 'back to one' },
  ContextMenu: { act: 'menu' },
};

function written(key: string): KeyAct | undefined {
  return isLetter(key) && key !== ' ' && !pageKeys.has(key) ? { act: 'write', typed: key } : undefined;
}
