import { contextNow } from '#renderer/books/book-api.ts';
import { fileDialogs, type FileApi } from '#renderer/files/file-dialogs.tsx';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import { Caution } from '#renderer/kit/caution.tsx';
import { Hint } from '#renderer/kit/note.tsx';
import { LookPart } from './look-part.tsx';
import { WorkshopPage } from './workshop-page.tsx';
import css from './workshop.module.css';
import { ScrollPage } from '#renderer/kit/scroll-page.tsx';
import { Muted } from '#renderer/kit/muted.tsx';

/** The workshop's own page: its name, its settings, and its file. */
export function workshopPlace(api: FileApi): () => PlaceView {
  const files = fileDialogs(api);
  return () => {
    const context = contextNow(api);
    const { name, path, notices } = api.info.value;
    return {
      about: context.workshop.name,
      aside: '',
      acts: files.acts,
      work: (
        <ScrollPage class={css['workshopPage']}>
          <WorkshopPage context={context} api={api} />
          <section class={css['workshopGroup']}>
            <h2>The book</h2>
            <p>
              <b>{name}</b> <Muted>{path}</Muted>
            </p>
            {notices.map((says) => (
              <Caution key={says}>{says}</Caution>
            ))}
            <Hint>Every edit is in the book at once. A copy of each day is kept beside it, the last 14 of them.</Hint>
          </section>
          <LookPart />
          {files.dialog()}
        </ScrollPage>
      ),
    };
  };
}
