import type { ComponentChildren } from 'preact';
import css from './note.module.css';

/** Small type under what it explains. */
export function Hint({ children }: { readonly children: ComponentChildren }) {
  return <p class={css['hint']}>{children}</p>;
}

interface FaultParts {
  /** `alert` if it answers an act just done. */
  readonly role?: 'alert' | 'status';
  readonly children: ComponentChildren;
}

/** What is wrong, in a sentence. */
export function Fault({ role = 'status', children }: FaultParts) {
  return (
    <p class={css['fault']} role={role}>
      {children}
    </p>
  );
}
