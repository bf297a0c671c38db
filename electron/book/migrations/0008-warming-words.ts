import type { Migration } from './migration.ts';

const was = 'Could be nearly double; no sun counted; the watch reading decides.';
const becomes =
  'The range covers lamp heat and glass. Sun counts only where its area is given; a heater or hot air under the lamp does not. The watch reading decides.';

/** The caution of warming by lamps and of the hottest day says what their range covers, where the house has not reworded it. */
export const warmingWords: Migration = {
  version: 8,
  name: 'words of warming',
  up: (db) => {
    db.prepare('UPDATE line SET "caution" = ? WHERE "caution" = ?').run(becomes, was);
  },
};
