/** An action of a key for the whole page, wherever the focus is. */
export type PageAct =
  | 'find'
  | 'next flag'
  | 'flag before'
  | 'next moved'
  | 'moved before'
  | 'next part'
  | 'part before'
  | 'undo'
  | 'redo'
  | 'help';

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
  if (key === 'F1') return 'help';
  if (key === 'F6') return shiftKey ? 'part before' : 'next part';
  if (key === 'F7') return shiftKey ? 'moved before' : 'next moved';
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
