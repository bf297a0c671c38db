import { effect, type ReadonlySignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { ListPaper } from '#renderer/print/list-paper.ts';
import { PaintedList } from '#renderer/print/painted-list.tsx';
import { paperName } from '#renderer/print/paper-name.ts';
import { PrintOnAsk } from '#renderer/print/print-on-ask.tsx';
import { HelpPanel } from '#renderer/help/help-panel.tsx';
import { Workspace } from './workspace.tsx';
import { FindField } from './find-field.tsx';
import { onMovingOn } from './moving-on.ts';
import { focusNextPart } from './next-part.ts';
import { pageAct } from './page-keys.ts';
import type { PageAct } from './page-keys.ts';
import type { PageView } from './page-view.ts';
import { PlaceTop } from './place-top.tsx';
import { entryOf, places } from '#shared-calc/contract/places.ts';
import type { Route } from './place-route.ts';
import { QuietLine } from './quiet-line.tsx';

interface PageParts {
  readonly page: PageView;
  readonly route: ReadonlySignal<Route>;
}

/** The page: the view that the link names, and the keys that work everywhere. */
export function Page({ page, route }: PageParts) {
  const find = useRef<HTMLInputElement>(null);
  const { help } = page;
  const here = route.value;
  const title = places.find((place) => place.id === here.place)?.title ?? '';
  const view = page.place(here);
  usePageTitle(title, view.about);
  useFocusOnPlaceChange(here.place);
  useEffect(page.moveOn, [here]);
  useEffect(() => help.follow(), [here.place]);
  useEffect(() => onMovingOn(document, page.moveOn), []);
  useEffect(() => {
    const run = (act: PageAct) => runPageAct(act, { page, find: find.current });
    return listenForKeys(run);
  }, []);
  return (
    <Workspace
      here={here.place}
      workshop={page.workshop.value}
      jobs={page.jobs}
      work={
        <main id="work" tabIndex={-1} key={here.place}>
          <PlaceTop
            title={title}
            entry={entryOf(here.place)}
            here={here.place}
            about={view.about}
            aside={view.aside}
            acts={view.acts}
          >
            {view.find && <FindField {...view.find} field={find} refuse={page.refuse} />}
          </PlaceTop>
          {view.work}
          {view.printed && (
            <PrintedList title={[title, view.about].filter((words) => words !== '').join(', ')} list={view.printed} />
          )}
        </main>
      }
      sidePanel={view.sidePanel}
      help={help.isOpen.value ? <HelpPanel help={help} here={here.place} /> : undefined}
      showHelp={() => help.show()}
      line={<QuietLine view={page.line} acts={page.lineActs} keys={page.keys} />}
    />
  );
}

/** A paper gives the page its name, and so the file that it is printed into; else the view does. */
function usePageTitle(title: string, about: string): void {
  useEffect(
    () =>
      effect(() => {
        const paper = paperName.value;
        const named = paper === undefined ? [title, about, 'Loamwright'] : [paper, paper.includes(about) ? '' : about];
        document.title = named.filter((words) => words !== '').join(', ');
      }),
    [title, about],
  );
}

interface PrintedListParts {
  readonly title: string;
  readonly list: () => ListPaper | undefined;
}

function PrintedList({ title, list }: PrintedListParts) {
  return (
    <PrintOnAsk
      paper={() => {
        const paper = list();
        return paper && <PaintedList title={title} paper={paper} />;
      }}
    />
  );
}

/** Focuses the heading of the new view if the focused element was removed with the previous view. */
function useFocusOnPlaceChange(place: string): void {
  const before = useRef(place);
  useEffect(() => {
    if (before.current === place) return;
    before.current = place;
    if (document.activeElement === document.body) document.querySelector<HTMLElement>('#work h1')?.focus();
  }, [place]);
}

interface Reach {
  readonly page: PageView;
  readonly find: HTMLInputElement | null;
}

function runPageAct(act: PageAct, { page, find }: Reach): void {
  const acts: Readonly<Record<PageAct, () => void>> = {
    find: () => {
      find?.focus();
      find?.select();
    },
    help: () => (page.help.isOpen.peek() ? page.help.close() : page.help.show()),
    undo: page.lineActs.undo,
    redo: page.lineActs.redo,
    'next flag': () => page.nextFlag(false),
    'flag before': () => page.nextFlag(true),
    'next moved': () => page.nextMoved(false),
    'moved before': () => page.nextMoved(true),
    'next part': () => focusNextPart(document, false),
    'part before': () => focusNextPart(document, true),
  };
  acts[act]();
}

/** Elements that keys write into; a checkbox is not one. */
const fields = 'input:not([type=checkbox]), textarea, select';

function listenForKeys(run: (act: PageAct) => void): () => void {
  const onKey = (event: KeyboardEvent) => {
    const { key, ctrlKey, metaKey, altKey, shiftKey, target } = event;
    const inField = target instanceof Element && target.closest(fields) !== null;
    const act = pageAct({ key, ctrlKey, metaKey, altKey, shiftKey, inField });
    if (!act) return;
    event.preventDefault();
    run(act);
  };
  document.addEventListener('keydown', onKey);
  return () => document.removeEventListener('keydown', onKey);
}
