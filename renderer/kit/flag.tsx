import type { ComponentChildren } from 'preact';
import { Sign, type SignName } from '#renderer/frame/sign.tsx';
import css from './flag.module.css';

interface FlagParts {
  /** Sets the colour; the words and the sign say the same. */
  readonly state: string;
  readonly sign?: SignName | undefined;
  /** There are words before it. */
  readonly after?: boolean;
  readonly children: ComponentChildren;
}

/** A short status with its sign. */
export function Flag({ state, sign, after = false, children }: FlagParts) {
  return (
    <span class={after ? `${css['flag']} ${css['after']}` : css['flag']} data-state={state}>
      {sign && <Sign name={sign} />}
      {children}
    </span>
  );
}

interface FlagRowsParts {
  readonly label?: string;
  /** A class from the view. */
  readonly class?: string | undefined;
  /** `li` elements: a flag, and what it is about. */
  readonly children: ComponentChildren;
}

/** A list whose rows begin with a flag. */
export function FlagRows({ label, class: own, children }: FlagRowsParts) {
  return (
    <ul class={own === undefined ? css['rows'] : `${css['rows']} ${own}`} aria-label={label}>
      {children}
    </ul>
  );
}
