interface CheckboxParts {
  readonly label: string;
  readonly on: boolean;
  readonly closed?: boolean;
  readonly turn: (on: boolean) => void;
}

/** A box to tick with its words. */
export function Checkbox({ label, on, closed = false, turn }: CheckboxParts) {
  return (
    <label class="tick">
      <input type="checkbox" checked={on} disabled={closed} onChange={(event) => turn(event.currentTarget.checked)} />{' '}
      {label}
    </label>
  );
}
