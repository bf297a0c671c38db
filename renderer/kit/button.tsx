import type { ComponentChildren, ComponentProps } from 'preact';
import css from './button.module.css';

interface ButtonParts extends Omit<ComponentProps<'button'>, 'class' | 'className' | 'style'> {
  /** `main` is the main act of its view or dialog; `plain` looks like a link, for use in a sentence or a row. */
  readonly look?: 'framed' | 'main' | 'plain';
}

export function Button({ look = 'framed', ...rest }: ButtonParts) {
  return <button type="button" {...rest} class={look === 'main' ? `${css['framed']} ${css['main']}` : css[look]} />;
}

interface ButtonsParts {
  /** Adds space above. */
  readonly apart?: boolean;
  readonly children: ComponentChildren;
}

/** Buttons in a row, after what they act on. */
export function Buttons({ apart = false, children }: ButtonsParts) {
  return <div class={apart ? `${css['row']} ${css['apart']}` : css['row']}>{children}</div>;
}
