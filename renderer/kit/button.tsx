import type { ComponentChildren, ComponentProps } from 'preact';
import css from './button.module.css';

interface ButtonParts extends Omit<ComponentProps<'button'>, 'class' | 'className' | 'style'> {
  /** `main` is the act of its place or dialog; `plain` reads like a link and stands in a sentence or a row. */
  readonly look?: 'framed' | 'main' | 'plain';
}

export function Button({ look = 'framed', ...rest }: ButtonParts) {
  return <button type="button" {...rest} class={look === 'main' ? `${css['framed']} ${css['main']}` : css[look]} />;
}

interface ButtonsParts {
  /** Stands clear of what is above it. */
  readonly apart?: boolean;
  readonly children: ComponentChildren;
}

/** Buttons side by side, at the end of what they act on. */
export function Buttons({ apart = false, children }: ButtonsParts) {
  return <div class={apart ? `${css['row']} ${css['apart']}` : css['row']}>{children}</div>;
}
