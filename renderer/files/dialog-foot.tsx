import { actNames } from '#shared-calc/words/act-names.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
interface DialogFootParts {
  readonly done: () => void;
  readonly act: string;
  readonly may: boolean;
  readonly run: () => void;
}

/** The buttons of a dialog: cancel, or do it. */
export function DialogFoot({ done, act, may, run }: DialogFootParts) {
  return (
    <Buttons>
      <Button onClick={done}>{actNames.cancel}</Button>
      <Button look="main" disabled={!may} onClick={run}>
        {act}
      </Button>
    </Buttons>
  );
}
