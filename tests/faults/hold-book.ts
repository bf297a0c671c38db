import { writeSync } from 'node:fs';
import Database from 'better-sqlite3';

/* Locks a book as another program may, until its input ends. */
const [path = '', how = ''] = process.argv.slice(2);
const db = new Database(path, { fileMustExist: true });
if (how === 'whole') db.pragma('locking_mode = EXCLUSIVE');
db.exec('BEGIN EXCLUSIVE');
writeSync(1, 'held\n');
process.stdin.on('end', () => {
  db.exec('ROLLBACK');
  db.close();
});
process.stdin.resume();
