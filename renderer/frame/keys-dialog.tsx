import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Dialog } from '#renderer/kit/dialog.tsx';
import { listedKeys } from './page-keys.ts';
import css from './keys-dialog.module.css';

/** All keys; F1 opens it, Escape closes it. */
export function KeysDialog({ close }: { readonly close: () => void }) {
  return (
    <Dialog title="Keys" close={close}>
      {(leave) => (
        <>
          <div class={css['keys']} tabIndex={0} role="group" aria-label="All keys">
            {listedKeys.map(({ title, keys }) => (
              <section key={title}>
                <h3>{title}</h3>
                <dl>
                  {keys.map(([key, does]) => (
                    <div key={key}>
                      <dt>
                        <kbd>{key}</kbd>
                      </dt>
                      <dd>{does}</dd>
                    </div>
                  ))}
                </dl>
              </section>
            ))}
          </div>
          <Buttons>
            <Button look="main" autoFocus onClick={leave}>
              Close
            </Button>
          </Buttons>
        </>
      )}
    </Dialog>
  );
}
