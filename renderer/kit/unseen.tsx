import type { ComponentChildren } from 'preact';
import css from './unseen.module.css';

/** Words for screen readers alone. */
export function Unseen({ children }: { readonly children: ComponentChildren }) {
  return <span class={css['unseen']}>{children}</span>;
}
