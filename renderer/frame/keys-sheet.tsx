import type { Ref } from 'preact';
import { keysTold } from './page-keys.ts';

/** All keys on one sheet; F1 opens it, Escape closes it. */
export function KeysSheet({ sheet }: { readonly sheet: Ref<HTMLDialogElement> }) {
  return (
    <dialog ref={sheet} class="sheet" aria-labelledby="keys-title">
      <h2 id="keys-title">Keys</h2>
      <dl class="keys-told">
        {keysTold.map(([keys, does]) => (
          <div key={keys}>
            <dt>
              <kbd>{keys}</kbd>
            </dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
      <form method="dialog">
        <button class="button act">Close</button>
      </form>
    </dialog>
  );
}
