import { wearTheme, type Theme } from '#renderer/look/wear-theme.ts';

const key = 'loamwright theme';

/** The theme chosen on this machine; the system's own where none is, or where nothing may be kept. */
export function keptTheme(page: Window): Theme {
  const kept = storageOf(page)?.getItem(key);
  return kept === 'light' || kept === 'dark' ? kept : 'system';
}

/** Wears a theme and keeps it for the next time. */
export function keepTheme(page: Window, theme: Theme): void {
  wearTheme(page.document.documentElement, theme);
  storageOf(page)?.setItem(key, theme);
}

/** A browser may be set to keep nothing; then asking for its store throws. */
function storageOf(page: Window): Storage | undefined {
  try {
    return page.localStorage;
  } catch {
    return undefined;
  }
}
