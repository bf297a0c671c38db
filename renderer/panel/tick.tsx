interface TickParts {
  readonly label: string;
  readonly on: boolean;
  readonly closed?: boolean;
  readonly turn: (on: boolean) => void;
}

/** A box to tick with its words. */
export function Tick({ label, on, closed = false, turn }: TickParts) {
  return (
    <label class="tick">
      <input type="checkbox" checked={on} disabled={closed} onChange={(event) => turn(event.currentTarget.checked)} />{' '}
      {label}
    </label>
  );
}
