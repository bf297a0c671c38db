import { readFileSync } from 'node:fs';
import Database from 'better-sqlite3';
import { z } from 'zod';
import { isDatabaseError } from './storage-fault.ts';
import { guard } from './connection.ts';

/** What a person knows a book by. */
export interface Contents {
  readonly jobs: number;
  readonly tanks: number;
  readonly materials: number;
  /** The time of the last edit, as ISO 8601 in UTC. */
  readonly lastEdit: string;
}

const Row = z.strictObject({ jobs: z.int(), tanks: z.int(), materials: z.int(), lastEdit: z.string() });
const count = `SELECT (SELECT count(*) FROM job) AS jobs, (SELECT count(*) FROM tank) AS tanks,
  (SELECT count(*) FROM material) AS materials, (SELECT at FROM journal ORDER BY revision DESC LIMIT 1) AS lastEdit`;

/** What a file that is not open holds; undefined where it cannot be read as a book. Nothing is written beside it. */
export function contentsOf(file: string): Contents | undefined {
  const bytes = readFileSync(file);
  if (bytes.length < 100) return undefined;
  // A file at rest that says it has a log is not read from memory.
  bytes.fill(1, 18, 20);
  const db = new Database(bytes, { readonly: true });
  try {
    guard(db);
    return Row.parse(db.prepare(count).get());
  } catch (error) {
    if (isDatabaseError(error) || error instanceof z.ZodError) return undefined;
    throw error;
  } finally {
    db.close();
  }
}
