import type { ComponentChildren } from 'preact';
import css from './checkbox.module.css';

interface CheckboxParts {
  readonly label: ComponentChildren;
  readonly on: boolean;
  readonly closed?: boolean;
  readonly turn: (on: boolean) => void;
}

/** A box to tick with its words. */
export function Checkbox({ label, on, closed = false, turn }: CheckboxParts) {
  return (
    <label class={css['line']}>
      <input type="checkbox" checked={on} disabled={closed} onChange={(event) => turn(event.currentTarget.checked)} />
      <span>{label}</span>
    </label>
  );
}

interface RadioParts {
  /** The same for all of which one is chosen. */
  readonly name: string;
  readonly label: string;
  readonly on: boolean;
  readonly choose: () => void;
}

/** One of several. */
export function Radio({ name, label, on, choose }: RadioParts) {
  return (
    <label class={css['line']}>
      <input type="radio" name={name} checked={on} onChange={choose} />
      {label}
    </label>
  );
}
