import type { ComponentChildren } from 'preact';
import { Sign } from '#renderer/frame/sign.tsx';
import type { Sourced } from '#shared-calc/fields/source.ts';
import { markWords } from '#shared-calc/bench/source-words.ts';
import css from './from.module.css';

interface FromParts {
  readonly of: Sourced;
  /** In place of the mark's own words. */
  readonly children?: ComponentChildren;
}

/** Where a figure is from, by sign and word. */
export function From({ of: { source }, children = markWords(source) }: FromParts) {
  return (
    <span class={css['from']}>
      <Sign name={source ?? 'unknown'} />
      {children}
    </span>
  );
}
