import type Database from 'better-sqlite3';

/** One step of the file's form. Written once and never changed after a release. */
export interface Migration {
  /** 1 and upward without a gap. */
  readonly version: number;
  readonly name: string;
  readonly up: (db: Database.Database) => void;
}
