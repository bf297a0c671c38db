import type { ComponentChildren, ComponentProps } from 'preact';
import css from './button.module.css';

interface ButtonParts extends Omit<ComponentProps<'button'>, 'class' | 'className' | 'style'> {
  /**
   * `main` is the main act of its view or dialog; `plain` looks like a link, for use in a
   * sentence or a row; `bare` has the look that its place gives it.
   */
  readonly look?: 'framed' | 'main' | 'plain' | 'bare';
}

export function Button({ look = 'framed', ...rest }: ButtonParts) {
  const looks = {
    framed: css['framed'],
    main: `${css['framed']} ${css['main']}`,
    plain: css['plain'],
    bare: undefined,
  };
  return <button type="button" {...rest} class={looks[look]} />;
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
