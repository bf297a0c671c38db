/** Where the focus goes after a text is accepted. */
export type Onward = 'stay' | 'down' | 'up' | 'right' | 'left';

export type FieldAct =
  | { readonly act: 'walk'; readonly by: 1 | -1 }
  | { readonly act: 'accept'; readonly onward: Onward }
  | { readonly act: 'close' }
  | { readonly act: 'cancel' }
  | { readonly act: 'settle'; readonly onward: Onward };

export interface FieldState {
  /** Completions are shown under the field. */
  readonly listed: boolean;
  /** The highlighted offer; -1 for none, so that Enter accepts what was typed. */
  readonly active: number;
  /** Each offer is a whole answer: Escape leaves the cell as it was. */
  readonly whole: boolean;
  readonly form: 'panel' | 'box';
}

interface Press {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly isComposing: boolean;
}

/** The action of a key in a rule field; `undefined` leaves it to the browser. */
export function fieldAct(press: Press, state: FieldState): FieldAct | undefined {
  if (press.isComposing) return undefined;
  return (state.listed ? listAct(press, state) : undefined) ?? textAct(press, state);
}

function listAct({ key, shiftKey }: Press, { active, whole, form }: FieldState): FieldAct | undefined {
  if (key === 'ArrowDown') return { act: 'walk', by: 1 };
  if (key === 'ArrowUp') return { act: 'walk', by: -1 };
  if (key === 'Escape') return whole ? undefined : { act: 'close' };
  return active >= 0 && (key === 'Enter' || key === 'Tab')
    ? { act: 'accept', onward: onwardOf(key, shiftKey, form) }
    : undefined;
}

function textAct({ key, shiftKey }: Press, { form }: FieldState): FieldAct | undefined {
  if (key === 'Escape') return { act: 'cancel' };
  if (key !== 'Enter' && (form === 'panel' || key !== 'Tab')) return undefined;
  return { act: 'settle', onward: onwardOf(key, shiftKey, form) };
}

function onwardOf(key: 'Enter' | 'Tab', back: boolean, form: FieldState['form']): Onward {
  if (form === 'panel') return 'stay';
  if (key === 'Tab') return back ? 'left' : 'right';
  return back ? 'up' : 'down';
}

/** The next offer; the list wraps around. */
export function nextOffer(active: number, by: 1 | -1, count: number): number {
  const next = active + by;
  if (next >= count) return 0;
  return next < 0 ? count - 1 : next;
}
