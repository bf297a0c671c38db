import type { ComponentChildren } from 'preact';
import { Fragment } from 'preact';
import css from './fact-list.module.css';

/** Facts in a side panel, one a row. */
export function FactList({ facts }: { readonly facts: readonly (readonly [what: string, is: ComponentChildren])[] }) {
  return (
    <dl class={css['facts']}>
      {facts.map(([what, is]) => (
        <Fragment key={what}>
          <dt>{what}</dt>
          <dd>{is}</dd>
        </Fragment>
      ))}
    </dl>
  );
}
