import type { ComponentChildren } from 'preact';
import css from './empty-note.module.css';

/** Stands where a list or a paper would, and says why there is none. */
export function EmptyNote({ children }: { readonly children: ComponentChildren }) {
  return <p class={css['note']}>{children}</p>;
}
