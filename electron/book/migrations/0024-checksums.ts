import type { Migration } from './migration.ts';

/**
 * A checksum of every row, and a journal that may be squashed: rows before a `squash` may go, and the journal of a book
 * that was accepted as it is counts from there. The runner of migrations sums all rows after each step.
 */
export const checksums: Migration = {
  version: 24,
  name: 'checksums',
  up: (db) =>
    db.exec(`
CREATE TABLE checksum (
  "table" TEXT NOT NULL,
  "key" TEXT NOT NULL,
  "crc" INTEGER NOT NULL,
  PRIMARY KEY ("table", "key")
) STRICT, WITHOUT ROWID;

CREATE TABLE new_journal (
  revision INTEGER PRIMARY KEY NOT NULL,
  at TEXT NOT NULL,
  kind TEXT NOT NULL CHECK (kind IN ('begin', 'migrate', 'squash', 'accept', 'do', 'undo', 'redo')),
  lasting INTEGER NOT NULL CHECK (lasting IN (0, 1)),
  label TEXT NOT NULL,
  change TEXT NOT NULL CHECK (json_valid(change))
) STRICT;
INSERT INTO new_journal SELECT * FROM journal;
DROP TRIGGER journal_stays;
DROP TRIGGER journal_is_kept;
DROP TABLE journal;
ALTER TABLE new_journal RENAME TO journal;
CREATE INDEX journal_lasting ON journal (revision) WHERE lasting = 1;
CREATE INDEX journal_base ON journal (revision) WHERE kind IN ('squash', 'accept');
CREATE TRIGGER journal_stays BEFORE UPDATE ON journal
WHEN NOT (new.kind = 'squash' AND new.revision = old.revision)
BEGIN SELECT RAISE(ABORT, 'the journal is only added to'); END;
CREATE TRIGGER journal_is_kept BEFORE DELETE ON journal
WHEN old.revision >= ifnull((SELECT max(revision) FROM journal WHERE kind = 'squash'), 0)
BEGIN SELECT RAISE(ABORT, 'the journal is only added to'); END;
`),
};
