import type { Bridge } from '#renderer/bridge.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import { failed } from '#shared-calc/result.ts';
import { fileSheets } from './file-dialogs.tsx';
import '#renderer/books/books.css';

/** Where no book can be read: why, and the ways out of it. A book that opens is read by the page anew. */
export function noBookPlace(bridge: Pick<Bridge, 'call'>, says: string, page: Window = window): () => PlaceView {
  const files = fileSheets({
    call: bridge.call,
    say: () => page.location.reload(),
    restore: () => Promise.resolve(failed('No book is open that a backup could be brought back to.')),
  });
  return () => ({
    about: '',
    aside: '',
    acts: [],
    look: 'empty-place',
    work: (
      <div class="place-page no-book">
        <p class="caution" role="alert">
          {says}
        </p>
        <div class="pair">
          <button class="button act" type="button" onClick={() => page.location.reload()}>
            Try again
          </button>
          <button class="button" type="button" onClick={() => files.open('open')}>
            Open another book
          </button>
          <button class="button" type="button" onClick={() => files.open('new')}>
            Make a new book
          </button>
        </div>
        {files.sheet()}
      </div>
    ),
  });
}
