import '#shared-calc/contract/no-code-from-text.ts';
import { signal } from '@preact/signals';
import { pageOf } from './app.tsx';
import { openBridge, type Bridge } from './bridge.ts';
import { noBookPlace } from './files/no-book.tsx';
import type { PageView } from './frame/page-view.ts';
import { readRoute } from './frame/place-route.ts';
import { helpState } from './help/help-state.ts';
import { wearTheme } from './look/wear-theme.ts';
import { mountPage } from './mount-page.tsx';
import { storedTheme } from './places/workshop/stored-theme.ts';
import { pageClock } from './store/clock.ts';
import { openPageStore } from './store/page-store.ts';

/** The page when no book can be read: it says why, and shows the ways out. */
function pageWithoutBook(bridge: Bridge, says: string): PageView {
  return {
    workshop: signal(''),
    line: signal({ saved: 'No book is open', said: { words: says, refused: true } }),
    lineActs: { undo: () => undefined, redo: () => undefined },
    keys: [['F1', 'help']],
    help: helpState(),
    nextFlag: () => undefined,
    refuse: () => undefined,
    moveOn: () => undefined,
    place: noBookPlace(bridge, says),
  };
}

wearTheme(document.documentElement, storedTheme(window));
const bridge = openBridge(window);
const { place } = readRoute(location.hash);
const showsBench = place === 'bench' || place === 'needs';
const store = await openPageStore(bridge, pageClock(), !showsBench);
mountPage(store.ok ? pageOf(store.value) : pageWithoutBook(bridge, store.fault));
