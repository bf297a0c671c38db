import type { Ref } from 'preact';
import { Button } from '#renderer/kit/button.tsx';
import { listedKeys } from './page-keys.ts';

/** All keys on one sheet; F1 opens it, Escape closes it. */
export function KeysSheet({ sheet }: { readonly sheet: Ref<HTMLDialogElement> }) {
  return (
    <dialog ref={sheet} class="sheet keys-sheet" aria-labelledby="keys-title">
      <h2 id="keys-title">Keys</h2>
      <div class="all-keys" tabIndex={0} role="group" aria-label="All keys">
        {listedKeys.map(({ title, keys: told }) => (
          <section key={title}>
            <h3>{title}</h3>
            <dl class="keys-told">
              {told.map(([keys, does]) => (
                <div key={keys}>
                  <dt>
                    <kbd>{keys}</kbd>
                  </dt>
                  <dd>{does}</dd>
                </div>
              ))}
            </dl>
          </section>
        ))}
      </div>
      <form method="dialog">
        <Button look="main" type="submit" autoFocus>
          Close
        </Button>
      </form>
    </dialog>
  );
}
