import { Button } from '#renderer/kit/button.tsx';
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
      <Button onClick={done}>Leave it</Button>
      <Button look="main" disabled={!may} onClick={run}>
        {act}
      </Button>
    </div>
  );
}
