import type { ComponentChildren } from 'preact';
import { Sign, type SignName } from '#renderer/frame/sign.tsx';
import css from './standing.module.css';

interface StandingParts {
  /** Sets the colour; the words say the same. `offer` has a button at its end. */
  readonly state: string;
  readonly sign?: SignName | undefined;
  readonly children: ComponentChildren;
}

/** A line of its own about the state of what is shown. */
export function Standing({ state, sign, children }: StandingParts) {
  return (
    <p class={css['standing']} data-state={state}>
      {sign && <Sign name={sign} />}
      {children}
    </p>
  );
}
