import type { Bridge } from '#renderer/bridge.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Caution } from '#renderer/kit/caution.tsx';
import { failed } from '#shared-calc/result.ts';
import { fileDialogs } from './file-dialogs.tsx';
import css from './files.module.css';
import { ScrollPage } from '#renderer/kit/scroll-page.tsx';

/** Shown when no book can be read: why, and the ways out. After a book opens, the page is reloaded. */
export function noBookPlace(
  bridge: Pick<Bridge, 'call' | 'desktop'>,
  says: string,
  page: Window = window,
): () => PlaceView {
  const files = fileDialogs({
    call: bridge.call,
    desktop: bridge.desktop,
    say: () => page.location.reload(),
    restore: () => Promise.resolve(failed('No book is open that a backup could be brought back to.')),
  });
  return () => ({
    about: '',
    aside: '',
    acts: [],
    work: (
      <ScrollPage class={css['noBook']}>
        <Caution role="alert">{says}</Caution>
        <Buttons>
          <Button look="main" onClick={() => page.location.reload()}>
            Try again
          </Button>
          <Button onClick={() => files.open('open')}>Open another book</Button>
          <Button onClick={() => files.open('new')}>Make a new book</Button>
        </Buttons>
        {files.dialog()}
      </ScrollPage>
    ),
  });
}
