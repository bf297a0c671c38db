export type Theme = 'system' | 'light' | 'dark';

/** Applies a theme to the page; `system` follows the machine. */
export function wearTheme(page: HTMLElement, theme: Theme): void {
  if (theme === 'system') delete page.dataset['theme'];
  else page.dataset['theme'] = theme;
}
