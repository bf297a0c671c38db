import type { ComponentChildren } from 'preact';
import { Button, Buttons } from './button.tsx';
import { Dialog } from './dialog.tsx';
import { Fault } from './note.tsx';

interface AskParts {
  readonly title: string;
  /** What the main act says. */
  readonly does: string;
  /** Does it; `true` where it was done and the dialog may go. */
  readonly run: () => boolean | Promise<boolean>;
  /** Why it was not done. */
  readonly wrong: string | undefined;
  readonly disabled?: boolean;
  readonly close: () => void;
  /** Is handed the main act, for fields that take Enter. */
  readonly children: (enter: () => void) => ComponentChildren;
}

/** Asks for something: one main act, what is wrong with it, and leaving it. */
export function AskDialog({ title, does, run, wrong, disabled = false, close, children }: AskParts) {
  return (
    <Dialog title={title} close={close}>
      {(leave) => {
        const act = () => {
          void Promise.resolve(run()).then((done) => done && leave());
        };
        return (
          <>
            {children(act)}
            <Fault role="alert">{wrong}</Fault>
            <Buttons>
              <Button onClick={leave}>Leave it</Button>
              <Button look="main" disabled={disabled} onClick={act}>
                {does}
              </Button>
            </Buttons>
          </>
        );
      }}
    </Dialog>
  );
}
