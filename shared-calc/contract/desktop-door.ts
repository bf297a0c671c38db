import type { Channel } from './channel-names.ts';

/** The name under which the desktop's preload puts its API on the page's window. */
export const doorName = 'loamwright';

/** The system's file dialogs. A path never comes from the page. */
export interface DesktopFiles {
  readonly open: () => Promise<void>;
  readonly make: (begun: unknown) => Promise<void>;
  readonly saveCopy: () => Promise<void>;
  /** Opens a file that was dropped on the window. */
  readonly openDropped: (file: unknown) => Promise<void>;
}

/** What the desktop's preload gives the page: one function for each channel, and the news. */
export interface DesktopDoor {
  readonly call: { readonly [C in Channel]: (input: unknown) => Promise<unknown> };
  readonly files: DesktopFiles;
  /** Returns a function that stops listening. */
  readonly onNews: (listener: (news: unknown) => void) => () => void;
}
