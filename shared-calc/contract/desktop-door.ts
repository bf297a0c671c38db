import type { Channel } from './channel-names.ts';

/** The name under which the desktop's preload puts its API on the page's window. */
export const doorName = 'loamwright';

/** What the desktop's preload gives the page: one function for each channel, and the news. */
export interface DesktopDoor {
  readonly call: { readonly [C in Channel]: (input: unknown) => Promise<unknown> };
  /** Returns a function that stops listening. */
  readonly onNews: (listener: (news: unknown) => void) => () => void;
}
