import type { ComponentChildren } from 'preact';
import css from './checkbox.module.css';

interface CheckboxParts {
  readonly label: ComponentChildren;
  readonly on: boolean;
  readonly closed?: boolean;
  readonly turn: (on: boolean) => void;
}

/** A checkbox with its label. */
export function Checkbox({ label, on, closed = false, turn }: CheckboxParts) {
  return (
    <label class={css['line']}>
      <input type="checkbox" checked={on} disabled={closed} onChange={(event) => turn(event.currentTarget.checked)} />
      <span>{label}</span>
    </label>
  );
}

interface RadioParts {
  /** The same for all options of one choice. */
  readonly name: string;
  readonly label: string;
  readonly on: boolean;
  readonly choose: () => void;
}

/** One option of a choice. */
export function Radio({ name, label, on, choose }: RadioParts) {
  return (
    <label class={css['line']}>
      <input type="radio" name={name} checked={on} onChange={choose} />
      {label}
    </label>
  );
}
