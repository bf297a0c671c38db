interface SheetFootParts {
  readonly done: () => void;
  readonly act: string;
  readonly may: boolean;
  readonly run: () => void;
}

/** The acts at the foot of a sheet: leave it, or do it. */
export function SheetFoot({ done, act, may, run }: SheetFootParts) {
  return (
    <div class="pair">
      <button class="button" type="button" onClick={done}>
        Leave it
      </button>
      <button class="button act" type="button" disabled={!may} onClick={run}>
        {act}
      </button>
    </div>
  );
}
