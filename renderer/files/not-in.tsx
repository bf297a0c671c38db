import type { PlaceView } from '#renderer/frame/page-view.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Caution } from '#renderer/kit/caution.tsx';
import { Hint } from '#renderer/kit/note.tsx';
import { ScrollPage } from '#renderer/kit/scroll-page.tsx';
import css from './files.module.css';

/** Shown in a window that the service does not know: why, and how to come in. */
export function notInPlace(says: string, page: Window = window): () => PlaceView {
  return () => ({
    about: '',
    aside: '',
    acts: [],
    work: (
      <ScrollPage class={css['noBook']}>
        <Caution role="alert">{says}</Caution>
        <Hint>
          The link stands in the terminal in which Loamwright was started. It lets one browser in, once, within a
          minute. If yours is older, open it all the same: Loamwright then writes a new one below it. A window beside
          one that is in needs no link.
        </Hint>
        <Buttons>
          <Button look="main" onClick={() => page.location.reload()}>
            Try again
          </Button>
        </Buttons>
      </ScrollPage>
    ),
  });
}
