import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { lw, useDemoBook } from '#tests/electron/cli/run-cli.ts';

describe('changed', () => {
  const { book } = useDemoBook();

  test('an issued quote that was altered behind the program is named, and nothing is worked from it', async () => {
    const ask = async (...argv: readonly string[]) => lw(...argv, '--book', book());
    await ask('quote', '--job', 'J01', '--issue');
    await ask('quote', '--job', 'J01', '--issue');
    expect((await ask('changed', 'Q-0001A', 'Q-0001B')).code).toBe(0);
    alter(book());
    expect(await ask('changed', 'Q-0001A', 'Q-0001B')).toEqual({
      code: 1,
      out: '',
      err: 'Quote Q-0001A was altered since it was issued: it no longer says what the client was told.\n',
    });
  });
});

/** Changes a margin in the first quote; the trigger that protects it is restored afterwards. */
function alter(path: string): void {
  const db = new Database(path);
  const trigger = db.prepare("SELECT sql FROM sqlite_schema WHERE name = 'issued_quote_stays'").pluck().get();
  db.exec('DROP TRIGGER issued_quote_stays');
  db.exec(`UPDATE issued_quote SET body = replace(body, '"margin":0.3', '"margin":0.2') WHERE revision = 'A'`);
  db.exec(String(trigger));
  db.close();
}
