import type { ComponentChildren } from 'preact';
import css from './empty-note.module.css';

/** Shown instead of a list or a paper, with the reason why there is none. */
export function EmptyNote({ children }: { readonly children: ComponentChildren }) {
  return <p class={css['note']}>{children}</p>;
}
