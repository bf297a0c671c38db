import type { ComponentChildren } from 'preact';
import css from './link.module.css';

interface LinkParts {
  readonly href: string;
  /** `row` names a row and opens it, `act` looks like a plain button. */
  readonly look?: 'plain' | 'row' | 'act';
  readonly open?: boolean;
  readonly children: ComponentChildren;
}

/** A link to another view, or to the subject of a row. */
export function Link({ href, look = 'plain', open = false, children }: LinkParts) {
  return (
    <a class={css[look]} href={href} aria-current={open ? 'true' : undefined}>
      {children}
    </a>
  );
}
