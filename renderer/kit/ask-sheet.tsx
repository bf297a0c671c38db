import type { ComponentChildren } from 'preact';
import { useOpenSheet } from '#renderer/frame/use-open-sheet.ts';
import { useOwnId } from '#renderer/frame/use-own-id.ts';
import { Button } from './button.tsx';

interface AskSheetParts {
  readonly title: string;
  /** What the main act says. */
  readonly does: string;
  /** Does it; `true` where it was done and the sheet may go. */
  readonly run: () => boolean | Promise<boolean>;
  /** Why it was not done. */
  readonly wrong: string | undefined;
  readonly disabled?: boolean;
  readonly close: () => void;
  /** Is handed the main act, for fields that take Enter. */
  readonly children: (enter: () => void) => ComponentChildren;
}

/** A sheet over the page that asks for something: one main act, what is wrong with it, and leaving it. */
export function AskSheet({ title, does, run, wrong, disabled = false, close, children }: AskSheetParts) {
  const id = useOwnId();
  const sheet = useOpenSheet();
  const act = () => {
    void Promise.resolve(run()).then((done) => done && sheet.current?.close());
  };
  return (
    <dialog ref={sheet} class="sheet" aria-labelledby={id} onClose={close}>
      <h2 id={id}>{title}</h2>
      {children(act)}
      <p class="rule-fault" role="alert">
        {wrong}
      </p>
      <div class="pair">
        <Button onClick={() => sheet.current?.close()}>Leave it</Button>
        <Button look="main" disabled={disabled} onClick={act}>
          {does}
        </Button>
      </div>
    </dialog>
  );
}
