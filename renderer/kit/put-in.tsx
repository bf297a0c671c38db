import type { ComponentChildren } from 'preact';
import css from './put-in.module.css';

/** A sum with its figures put in. */
export function PutIn({ children }: { readonly children: ComponentChildren }) {
  return (
    <p class={css['putIn']} data-part="put-in">
      {children}
    </p>
  );
}
