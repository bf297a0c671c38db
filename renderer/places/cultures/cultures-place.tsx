import { actNames } from '#shared-calc/words/act-names.ts';
import { signal } from '@preact/signals';
import { contextNow } from '#renderer/books/book-api.ts';
import type { FindView, PlaceView } from '#renderer/frame/page-view.ts';
import { writeRoute, type Route } from '#renderer/frame/place-route.ts';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { storedNumber } from '#renderer/store/stored-number.ts';
import type { JobApi } from '#renderer/store/job-api.ts';
import type { CultureKind } from '#shared-calc/records/records.ts';
import type { TubWay } from '#shared-calc/prepare/tub-ways.ts';
import type { CultureState } from './culture-state.ts';
import { CultureKinds, KindBoard } from './kind-board.tsx';
import css from '#renderer/kit/part-page.module.css';
import { ScrollPage } from '#renderer/kit/scroll-page.tsx';

const USUAL_FLIES = 0;

/** The culture board: tubs by kind, what the jobs use of them and when, and what cannot be ready in time. */
export function culturesPlace(api: JobApi): (route: Route) => PlaceView {
  const kept = storedNumber(window, 'flies a week', USUAL_FLIES);
  const flies = signal(kept.read());
  const state: CultureState = {
    api,
    flies,
    way: signal<TubWay>('split'),
    wishFlies: (aWeek) => {
      flies.value = aWeek;
      kept.write(aWeek);
    },
  };
  return ({ rest: [id] }) => {
    const context = contextNow(api);
    const kinds = [...context.records.cultureKind.values()];
    const kind = kinds.find((each) => each.id === id) ?? kinds[0];
    return {
      about: kind?.label ?? '',
      aside: kind ? '' : 'no kind of culture yet',
      acts: kind
        ? [
            { label: 'Its kind in the culture book', run: () => (location.hash = writeRoute('culture-book', kind.id)) },
            {
              label: actNames.startTub,
              main: true,
              run: () => void api.doAct('startTub', { kind: kind.id, way: state.way.value }),
            },
          ]
        : [{ label: actNames.startTub, hint: 'Put a kind into the culture book first.' }],
      work: (
        <ScrollPage class={css['preparePage']}>
          <CultureKinds kinds={kinds} here={kind?.id} records={context.records} />
          {kind ? (
            <KindBoard key={kind.id} state={state} context={context} kind={kind} />
          ) : (
            <EmptyNote>
              There is no kind of culture yet.{' '}
              <a href={writeRoute('culture-book')}>Put the first into the culture book.</a>
            </EmptyNote>
          )}
        </ScrollPage>
      ),
      find: findKind(kinds),
    };
  };
}

function findKind(kinds: readonly CultureKind[]): FindView {
  return {
    label: 'Find a kind of culture',
    placeholder: 'Find a culture',
    options: kinds.map(({ label }) => label),
    go: (words) => {
      const found = kinds.find(({ label }) => label.toLowerCase().includes(words.toLowerCase()));
      if (found) location.hash = writeRoute('cultures', found.id);
      return found !== undefined;
    },
  };
}
