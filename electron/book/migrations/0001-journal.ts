/** The history: used quote numbers and the journal of edits. Rows are only ever added to both. */
export const firstJournal = `
CREATE UNIQUE INDEX issued_quote_once ON issued_quote (number, revision);
CREATE TRIGGER issued_quote_stays BEFORE UPDATE ON issued_quote
BEGIN SELECT RAISE(ABORT, 'an issued quote is kept as issued'); END;

CREATE TABLE quote_number (
  number TEXT NOT NULL,
  revision TEXT NOT NULL,
  sha256 TEXT NOT NULL,
  PRIMARY KEY (number, revision)
) STRICT;
CREATE TRIGGER quote_number_stays BEFORE UPDATE ON quote_number
BEGIN SELECT RAISE(ABORT, 'a used quote number stays'); END;
CREATE TRIGGER quote_number_is_kept BEFORE DELETE ON quote_number
BEGIN SELECT RAISE(ABORT, 'a used quote number stays'); END;

CREATE TABLE journal (
  revision INTEGER PRIMARY KEY NOT NULL,
  at TEXT NOT NULL,
  kind TEXT NOT NULL CHECK (kind IN ('begin', 'migrate', 'do', 'undo', 'redo')),
  lasting INTEGER NOT NULL CHECK (lasting IN (0, 1)),
  label TEXT NOT NULL,
  change TEXT NOT NULL CHECK (json_valid(change))
) STRICT;
CREATE INDEX journal_lasting ON journal (revision) WHERE lasting = 1;
CREATE TRIGGER journal_stays BEFORE UPDATE ON journal
BEGIN SELECT RAISE(ABORT, 'the journal is only added to'); END;
CREATE TRIGGER journal_is_kept BEFORE DELETE ON journal
BEGIN SELECT RAISE(ABORT, 'the journal is only added to'); END;
`;
