import { actNames } from '#shared-calc/words/act-names.ts';
import type { ComponentChildren } from 'preact';
import { Button, Buttons } from './button.tsx';
import { Dialog } from './dialog.tsx';
import { Fault } from './note.tsx';

interface AskParts {
  readonly title: string;
  /** Label of the main button. */
  readonly does: string;
  /** Runs the act; `true` if it succeeded and the dialog can close. */
  readonly run: () => boolean | Promise<boolean>;
  /** Why it failed. */
  readonly wrong: string | undefined;
  readonly disabled?: boolean;
  /** Another act in its place. */
  readonly also?: { readonly does: string; readonly run: () => boolean };
  readonly close: () => void;
  /** Receives the main act, for fields that submit with Enter. */
  readonly children: (enter: () => void) => ComponentChildren;
}

/** A dialog for input: one main act, the reason if it failed, and a way to cancel. */
export function AskDialog({ title, does, run, wrong, disabled = false, also, close, children }: AskParts) {
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
              <Button onClick={leave}>{actNames.cancel}</Button>
              {also && <Button onClick={() => also.run() && leave()}>{also.does}</Button>}
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
