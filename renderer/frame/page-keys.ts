/** An action of a key for the whole page, wherever the focus is. */
export type PageAct = 'find' | 'next flag' | 'flag before' | 'next part' | 'part before' | 'undo' | 'redo' | 'keys';

export interface PagePress {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
  readonly shiftKey: boolean;
  /** The focus is in a text field, which keeps its own undo and letters. */
  readonly inField: boolean;
}

/** `undefined` leaves the key to the focused element. */
export function pageAct(press: PagePress): PageAct | undefined {
  if (press.altKey) return undefined;
  if (press.ctrlKey || press.metaKey) return withCtrl(press);
  if (press.key === '/') return press.inField ? undefined : 'find';
  return numbered(press);
}

function numbered({ key, shiftKey }: PagePress): PageAct | undefined {
  if (key === 'F1') return 'keys';
  if (key === 'F6') return shiftKey ? 'part before' : 'next part';
  if (key === 'F8') return shiftKey ? 'flag before' : 'next flag';
  return undefined;
}

function withCtrl(press: PagePress): PageAct | undefined {
  if (press.key.toLowerCase() === 'f' && !press.shiftKey) return 'find';
  return press.inField ? undefined : stepping(press);
}

function stepping({ key, shiftKey }: PagePress): PageAct | undefined {
  const letter = key.toLowerCase();
  if (letter === 'z') return shiftKey ? 'redo' : 'undo';
  return letter === 'y' && !shiftKey ? 'redo' : undefined;
}

/** Keys grouped by purpose. */
export interface KeyGroup {
  readonly title: string;
  readonly keys: readonly (readonly [keys: string, does: string])[];
}

/** The keys as the page lists them, most used first; on a Mac, Command replaces Ctrl. */
export const listedKeys: readonly KeyGroup[] = [
  {
    title: 'Walk the boxes of the bench and of the books',
    keys: [
      ['Arrows', 'to the next box; with Ctrl to the next section, the first or the last size'],
      ['Tab', 'to the box at the right; with Shift at the left'],
      ['Home, End', 'to the first and the last box of the line; with Ctrl to the first and the last line'],
      ['Shift with arrows', 'choose a range; with the mouse, Ctrl adds another'],
      ['Shift Space, Ctrl Space', 'choose the whole line, the whole column'],
      ['Ctrl A', 'choose all'],
      ['Menu key, Shift F10', 'what can be done with it, as with the right button'],
      ['Escape', 'from a range back to one box'],
    ],
  },
  {
    title: 'Write in them',
    keys: [
      ['Any letter or figure', 'replaces what stands in the box; in a range, in all its boxes'],
      ['Enter, F2', 'write on in what stands there'],
      ['Enter on a section', 'open or close it; with Shift bring all its lines out'],
      ['Delete', 'bench: back to house; books: empty the box'],
      ['Ctrl C, Ctrl X, Ctrl V', 'copy, cut, paste, also from and to other programs'],
      ['Alt Shift C', 'copy with names: with the heads of lines and columns, and units'],
      ['Alt Shift Right', 'same to the right: the first box of the range into the others of its line'],
      ['Alt Shift Down', 'books: same below, the first line of the range into those under it'],
      ['Insert, Ctrl Delete', 'books: add a line, remove the chosen ones'],
    ],
  },
  {
    title: 'While a box is open',
    keys: [
      ['Enter', 'take it and go down; with Shift up'],
      ['Tab', 'take it and go right; with Shift left'],
      ['Escape', 'leave the box as it was'],
      ['Up, Down', 'walk the names offered; Enter or Tab takes one'],
    ],
  },
  {
    title: 'Everywhere',
    keys: [
      ['Ctrl Z', 'undo'],
      ['Ctrl Y', 'redo, as does Ctrl Shift Z'],
      ['/, Ctrl F', 'find a line, a tank or a place'],
      ['F8', 'next flag; with Shift the one before'],
      ['F6', 'on to the places, the work, the working panel, the quiet line; with Shift back'],
      ['T', 'at a picture: its figures as a table, and back'],
      ['F1', 'these keys'],
    ],
  },
];
