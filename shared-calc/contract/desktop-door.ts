import type { Channel } from './channel-names.ts';

/** The name under which the desktop's preload puts its door on the page's window. */
export const doorName = 'loamwright';

/** What the desktop's preload gives the page: one function a channel, and the news. */
export interface DesktopDoor {
  readonly call: { readonly [C in Channel]: (input: unknown) => Promise<unknown> };
  /** Answers how to stop listening. */
  readonly onNews: (listener: (news: unknown) => void) => () => void;
}
