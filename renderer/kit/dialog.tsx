import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { useOwnId } from '#renderer/frame/use-own-id.ts';
import css from './dialog.module.css';

interface DialogParts {
  readonly title: string;
  /** The content has its own heading. */
  readonly titled?: boolean;
  readonly wide?: boolean;
  /** Called after it is closed, also by Escape. */
  readonly close: () => void;
  /** Receives the function that closes it. */
  readonly children: (leave: () => void) => ComponentChildren;
}

/** A modal dialog, opened in the same frame: it receives the next key press. */
export function Dialog({ title, titled = false, wide = false, close, children }: DialogParts) {
  const id = useOwnId();
  const dialog = useRef<HTMLDialogElement>(null);
  useLayoutEffect(() => dialog.current?.showModal(), []);
  const name = titled ? { 'aria-label': title } : { 'aria-labelledby': id };
  return (
    <dialog ref={dialog} class={wide ? `${css['dialog']} ${css['wide']}` : css['dialog']} {...name} onClose={close}>
      {!titled && <h2 id={id}>{title}</h2>}
      {children(() => dialog.current?.close())}
    </dialog>
  );
}

interface ScrollParts {
  readonly label: string;
  readonly class?: string | undefined;
  readonly children: ComponentChildren;
}

/** Long content scrolls within its dialog. */
export function DialogScroll({ label, class: look, children }: ScrollParts) {
  return (
    <div
      class={look === undefined ? css['scroll'] : `${css['scroll']} ${look}`}
      tabIndex={0}
      role="group"
      aria-label={label}
    >
      {children}
    </div>
  );
}
