import type { ComponentChildren } from 'preact';
import css from './scroll-page.module.css';

interface ScrollPageParts {
  /** With a label it takes the focus, so that the keys can scroll it. */
  readonly label?: string;
  readonly role?: 'region' | 'group';
  /** `paper` lays a sheet of paper on a darker ground. */
  readonly look?: 'page' | 'paper';
  /** A class from the view. */
  readonly class?: string | undefined;
  readonly children: ComponentChildren;
}

/** The work of a view under its head, which scrolls. */
export function ScrollPage({ label, role = 'region', look = 'page', class: own, children }: ScrollPageParts) {
  const named = label === undefined ? {} : { tabIndex: 0, role, 'aria-label': label };
  return (
    <div class={own === undefined ? css[look] : `${css[look]} ${own}`} {...named}>
      {children}
    </div>
  );
}
