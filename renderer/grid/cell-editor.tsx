import { batch } from '@preact/signals';
import { render } from 'preact';
import { afterFrame } from '#renderer/frame/after-frame.ts';
import { RuleField } from '#renderer/writing/rule-field.tsx';
import type { Onward } from '#renderer/writing/rule-keys.ts';
import type { RuleHelp } from '#renderer/writing/rule-help.ts';
import css from './cell-editor.module.css';

export interface Opening {
  /** The drawn cell. Ask again after a scroll; `undefined` while it is out of view. */
  readonly cell: () => HTMLElement | undefined;
  /** The text in the cell. */
  readonly entry: string;
  /** The key that opened the editor; it replaces the text. */
  readonly typed?: string;
  readonly label: string;
  readonly help: RuleHelp;
  /** Accepts the text and moves on, or returns why not. Text equal to `entry` only moves on. */
  readonly settle: (text: string, onward: Onward) => string | undefined;
  /** Restores the focus; not called if the focus has already moved elsewhere. */
  readonly closed: () => void;
}

export interface CellEditor {
  readonly open: (opening: Opening) => void;
  readonly close: () => void;
  readonly isOpen: () => boolean;
  /** Repositions the field over its cell after a scroll. */
  readonly follow: () => void;
}

/** One field that opens over a cell. It is layered above the page, so that the grid's edges do not clip its list. */
export function cellEditor(host: HTMLElement): CellEditor {
  const root = document.createElement('div');
  root.className = css['editor'] ?? '';
  root.popover = 'manual';
  host.append(root);
  let now: Opening | undefined;

  let isLeft = false;
  let callOff = (): void => undefined;

  const clear = () => {
    root.hidePopover();
    render(null, root);
  };
  const close = () => {
    if (!now) return;
    const { closed } = now;
    now = undefined;
    if (!isLeft) closed();
    root.toggleAttribute('data-put-away', true);
    callOff = afterFrame(clear);
  };
  const settle = (text: string, onward: Onward) => {
    const opening = now;
    if (!opening) return undefined;
    // The focus moves before anything is redrawn: focusing makes the browser lay out everything drawn before it.
    return batch(() => {
      const refused = opening.settle(text, onward);
      if (refused === undefined) close();
      return refused;
    });
  };
  const open = (opening: Opening) => {
    close();
    callOff();
    render(null, root);
    now = opening;
    root.toggleAttribute('data-put-away', false);
    layOver(root, opening.cell());
    root.togglePopover(true);
    const { label, help, entry, typed } = opening;
    const text = typed ?? entry;
    const parts = { text, label, help, settle, cancel: close, begun: typed !== undefined };
    render(<RuleField key={label} {...parts} form="box" focus="end" />, root);
  };
  root.addEventListener('focusout', (event) => {
    if (!now || (event.relatedTarget instanceof Node && root.contains(event.relatedTarget))) return;
    isLeft = event.relatedTarget !== null;
    leave(root, now, close);
    isLeft = false;
  });
  return { open, close, isOpen: () => now !== undefined, follow: () => now && layOver(root, now.cell()) };
}

/** Losing the focus saves the text if it can be parsed, and discards it otherwise. */
function leave(root: HTMLElement, { entry, settle }: Opening, close: () => void): void {
  const written = root.querySelector('textarea')?.value ?? entry;
  if (written !== entry) settle(written, 'stay');
  close();
}

function layOver(root: HTMLElement, cell: HTMLElement | undefined): void {
  root.toggleAttribute('data-scrolled-away', cell === undefined);
  if (!cell) return;
  const box = cell.getBoundingClientRect();
  root.style.left = `${box.left + 4}px`;
  root.style.top = `${box.top}px`;
  root.style.width = `${box.width - 8}px`;
}
