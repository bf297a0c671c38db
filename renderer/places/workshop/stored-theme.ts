import { wearTheme, type Theme } from '#renderer/look/wear-theme.ts';

const key = 'loamwright theme';

/** The theme chosen on this machine; `system` if there is none, or if the browser stores nothing. */
export function storedTheme(page: Window): Theme {
  const stored = storageOf(page)?.getItem(key);
  return stored === 'light' || stored === 'dark' ? stored : 'system';
}

/** Applies a theme and stores it for the next start. */
export function keepTheme(page: Window, theme: Theme): void {
  wearTheme(page.document.documentElement, theme);
  storageOf(page)?.setItem(key, theme);
}

/** A browser may be set to store nothing; then access to its storage throws. */
function storageOf(page: Window): Storage | undefined {
  try {
    return page.localStorage;
  } catch {
    return undefined;
  }
}
