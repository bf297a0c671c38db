import { z } from 'zod';
import { places } from './places.ts';

/** Acts of the page that the desktop's menu may ask for. */
const menuActs = ['undo', 'redo', 'find', 'next flag'] as const;

/** What pages are told without having asked. */
export const News = z.discriminatedUnion('is', [
  /** The book has come to a revision, by this window's edit or another's; also said on every connection. */
  z.strictObject({ is: z.literal('written'), opening: z.string(), revision: z.int() }),
  /** Another book lies open: all is to be read again. */
  z.strictObject({ is: z.literal('opened'), opening: z.string() }),
  /** Chosen from the desktop's menu. */
  z.strictObject({ is: z.literal('do'), act: z.enum(menuActs) }),
  z.strictObject({ is: z.literal('go'), place: z.enum(places.map(({ id }) => id)) }),
]);
export type News = z.infer<typeof News>;
