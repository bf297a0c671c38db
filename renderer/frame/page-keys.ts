/** What a key asks of the whole page, wherever the keyboard is. */
export type PageAct = 'find' | 'next flag' | 'flag before' | 'next part' | 'part before' | 'undo' | 'redo' | 'keys';

export interface PagePress {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
  readonly shiftKey: boolean;
  /** A field is being written in: its own undo and its letters stay its own. */
  readonly inField: boolean;
}

/** `undefined` leaves the key to what has the keyboard. */
export function pageAct(press: PagePress): PageAct | undefined {
  if (press.altKey) return undefined;
  if (press.ctrlKey || press.metaKey) return press.inField ? undefined : stepping(press);
  if (press.key === '/') return press.inField ? undefined : 'find';
  return numbered(press);
}

function numbered({ key, shiftKey }: PagePress): PageAct | undefined {
  if (key === 'F1') return 'keys';
  if (key === 'F6') return shiftKey ? 'part before' : 'next part';
  if (key === 'F8') return shiftKey ? 'flag before' : 'next flag';
  return undefined;
}

function stepping({ key, shiftKey }: PagePress): PageAct | undefined {
  const letter = key.toLowerCase();
  if (letter === 'z') return shiftKey ? 'redo' : 'undo';
  return letter === 'y' && !shiftKey ? 'redo' : undefined;
}

/** The keys as the page tells them, most used first. */
export const keysTold: readonly (readonly [keys: string, does: string])[] = [
  ['Arrows', 'walk the boxes; with Ctrl to the next section, the first or the last size'],
  ['Shift with arrows', 'choose a range; Ctrl and A chooses all'],
  ['Home, End', 'first and last size of the line; with Ctrl first and last line'],
  ['Tab', 'next box'],
  ['Enter, F2', 'write in the box; on a section, open or close it, with Shift bring all its lines out'],
  ['Any letter or figure', 'replaces what stands in the box'],
  ['Escape', 'leaves the box as it was'],
  ['Delete', 'back to house'],
  ['Ctrl C, X, V', 'copy, cut, paste, also from and to other programs'],
  ['Ctrl R', 'fill right'],
  ['Ctrl Z, Ctrl Y', 'undo, redo'],
  ['/', 'find a line, a tank or a place'],
  ['F8', 'next flag; with Shift the one before'],
  ['F6', 'on to the places, the bench, the working panel, the quiet line'],
  ['F1', 'these keys'],
];
