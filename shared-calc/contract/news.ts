import { z } from 'zod';
import { places } from './places.ts';

/** Page acts that the desktop's menu can start. */
const menuActs = ['undo', 'redo', 'find', 'next flag', 'help'] as const;

/** What pages are notified of without asking. */
export const News = z.discriminatedUnion('is', [
  /** The book has reached a revision, by an edit of any window; also sent on every connection. */
  z.strictObject({ is: z.literal('written'), opening: z.string(), revision: z.int() }),
  /** Another book is open: the page reads everything again. */
  z.strictObject({ is: z.literal('opened'), opening: z.string() }),
  /** The file of the open book has gone, or is back; `book.info` says which. */
  z.strictObject({ is: z.literal('gone'), opening: z.string() }),
  /** `book.info` has one more notice. */
  z.strictObject({ is: z.literal('told'), opening: z.string() }),
  /** Chosen in the desktop's menu. */
  z.strictObject({ is: z.literal('do'), act: z.enum(menuActs) }),
  z.strictObject({ is: z.literal('go'), place: z.enum(places.map(({ id }) => id)) }),
]);
export type News = z.infer<typeof News>;
