import type { ComponentChildren } from 'preact';
import css from './muted.module.css';

interface MutedParts {
  readonly small?: boolean;
  readonly children: ComponentChildren;
}

/** Words of less weight within a line. */
export function Muted({ small = false, children }: MutedParts) {
  return <span class={small ? `${css['muted']} ${css['small']}` : css['muted']}>{children}</span>;
}

/** The same as a line of its own. */
export function MutedLine({ children }: { readonly children: ComponentChildren }) {
  return <p class={css['muted']}>{children}</p>;
}
