import '#shared-calc/contract/no-code-from-text.ts';
import { signal } from '@preact/signals';
import { pageOf } from './app.tsx';
import { ok } from '#shared-calc/result.ts';
import { openBridge } from './bridge.ts';
import { noBookPlace } from './files/no-book.tsx';
import { notInPlace } from './files/not-in.tsx';
import type { PageView } from './frame/page-view.ts';
import { readRoute } from './frame/place-route.ts';
import { helpState } from './help/help-state.ts';
import { wearTheme } from './look/wear-theme.ts';
import { mountPage } from './mount-page.tsx';
import { storedTheme } from './places/workshop/stored-theme.ts';
import { enterSession } from './session-secret.ts';
import { pageClock } from './store/clock.ts';
import { openPageStore } from './store/page-store.ts';

/** The page when no book can be read: it says why, and shows the ways out. */
function pageWithoutBook(says: string, place: PageView['place']): PageView {
  return {
    workshop: signal(''),
    line: signal({ saved: 'No book is open', said: { words: says, refused: true } }),
    lineActs: { undo: () => undefined, redo: () => undefined },
    keys: [['F1', 'help']],
    help: helpState(),
    nextFlag: () => undefined,
    nextMoved: () => undefined,
    refuse: () => undefined,
    moveOn: () => undefined,
    place,
  };
}

async function openPage(): Promise<PageView> {
  const entered = window.loamwright ? ok(undefined) : await enterSession(window);
  if (!entered.ok) return pageWithoutBook(entered.fault, notInPlace(entered.fault));
  const bridge = openBridge(window);
  const { place } = readRoute(location.hash);
  const showsBench = place === 'bench' || place === 'needs';
  const store = await openPageStore(bridge, pageClock(), !showsBench);
  return store.ok ? pageOf(store.value) : pageWithoutBook(store.fault, noBookPlace(bridge, store.fault));
}

wearTheme(document.documentElement, storedTheme(window));
mountPage(await openPage());
