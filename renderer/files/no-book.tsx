import type { Bridge } from '#renderer/bridge.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Caution } from '#renderer/kit/caution.tsx';
import { failed } from '#shared-calc/result.ts';
import { fileDialogs } from './file-dialogs.tsx';
import css from './files.module.css';
import { RecoveryPart } from './recovery-part.tsx';
import { ScrollPage } from '#renderer/kit/scroll-page.tsx';

type NoBookBridge = Pick<Bridge, 'call' | 'desktop' | 'onChanged'>;

/** Shown when no book can be read: why, what brings one back, and other ways out. Once a book opens, the page loads anew. */
export function noBookPlace(bridge: NoBookBridge, says: string, page: Window = window): () => PlaceView {
  const reload = () => page.location.reload();
  const files = fileDialogs({
    call: bridge.call,
    desktop: bridge.desktop,
    say: reload,
    restore: () => Promise.resolve(failed('No book is open that a backup could be brought back to.')),
  });
  // Another window, or the shell's dialog, may open one.
  bridge.onChanged((news) => {
    if (news.is === 'opened' && news.opening !== '') reload();
  });
  return () => ({
    about: '',
    aside: '',
    acts: [],
    work: (
      <ScrollPage class={css['noBook']}>
        <Caution role="alert">{says}</Caution>
        <Buttons>
          <Button look="main" onClick={reload}>
            Try again
          </Button>
          <Button onClick={() => files.open('open')}>Open another book</Button>
          <Button onClick={() => files.open('new')}>Make a new book</Button>
        </Buttons>
        <RecoveryPart call={bridge.call} opened={reload} />
        {files.dialog()}
      </ScrollPage>
    ),
  });
}
