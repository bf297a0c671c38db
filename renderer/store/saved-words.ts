/** How the book stands, in few words. */
export interface Saving {
  /** Edits that the book has not taken yet. */
  readonly waiting: number;
  readonly reached: boolean;
  /** The last edit has been on its way for more than a second. */
  readonly slow: boolean;
  /** As an ISO 8601 time in UTC. */
  readonly savedAt: string;
}

/** "Saved 14:02", by the clock on the wall; or what waits. */
export function savedWords({ waiting, reached, slow, savedAt }: Saving): string {
  if (!reached && waiting === 0) return 'The book does not answer for the moment';
  if (!reached) return `Not saved: ${waiting === 1 ? '1 edit waits' : `${waiting} edits wait`} for the book to answer`;
  if (slow) return 'Saving';
  return `Saved ${clockTime(new Date(savedAt))}`;
}

function clockTime(time: Date): string {
  const two = (part: number) => String(part).padStart(2, '0');
  return `${two(time.getHours())}:${two(time.getMinutes())}`;
}
