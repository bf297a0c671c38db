import type { ComponentChildren } from 'preact';
import css from './link.module.css';

interface LinkParts {
  readonly href: string;
  /** `row` names a row that it opens, `act` reads like a plain button. */
  readonly look?: 'plain' | 'row' | 'act';
  readonly open?: boolean;
  readonly children: ComponentChildren;
}

/** A way to another place, or to what a row is about. */
export function Link({ href, look = 'plain', open = false, children }: LinkParts) {
  return (
    <a class={css[look]} href={href} aria-current={open ? 'true' : undefined}>
      {children}
    </a>
  );
}
