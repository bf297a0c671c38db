import type Database from 'better-sqlite3';

/** One change of the file format. It never changes after its release. */
export interface Migration {
  /** From 1 upward without a gap. */
  readonly version: number;
  readonly name: string;
  readonly up: (db: Database.Database) => void;
}
