import { copyFileSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { openBook } from '#electron/book/open-book.ts';
import { openService } from '#electron/service/open-service.ts';
import { rememberRecent } from '#electron/service/recent-books.ts';
import { ask, bookAtHand, refused, serviceAtHand, temporaryFolder, today } from './service-at-hand.ts';

/** A book with a backup of yesterday, of which a part in the middle is zero. */
function damagedBook(): string {
  const path = bookAtHand();
  const folder = join(dirname(path), 'Workshop backups');
  mkdirSync(folder);
  copyFileSync(path, join(folder, 'Workshop 2027-03-09.loamwright'));
  const bytes = readFileSync(path);
  bytes.fill(0, bytes.length >> 1, (bytes.length >> 1) + 20_000);
  writeFileSync(path, bytes);
  return path;
}

function start(path: string, recentFile: string) {
  const rest = { today: () => today, onNews: () => undefined, log: () => undefined, recentFile };
  return openService({ path, lastUsed: true, ...rest });
}

describe('a start on a damaged book', () => {
  test('says why, what its backups hold and what the file gives; no other channel of a book is answered', () => {
    const { service, path } = serviceAtHand(damagedBook());
    const before = readFileSync(path);
    const recovery = ask({ service }, 'recovery.read', {});

    expect(recovery).toMatchObject({ name: 'Workshop.loamwright', path, isThere: true });
    expect(recovery.says).toMatch(/^Workshop\.loamwright is damaged/);
    expect(recovery.backups).toEqual([
      {
        file: 'Workshop 2027-03-09.loamwright',
        day: '2027-03-09',
        bytes: before.length,
        holds: { jobs: 1, tanks: 12, materials: 48, lastEdit: expect.any(String) as unknown },
      },
    ]);
    const kinds = recovery.salvage?.kinds ?? [];
    expect(kinds.some(({ filled }) => filled > 0)).toBe(true);
    expect(kinds.filter(({ lost, altered }) => lost + altered > 0)).toEqual([]);
    expect(refused({ service }, 'book.info', {})?.says).toBe(service.fault());
    expect(readFileSync(path).equals(before)).toBe(true);
  });

  test('a backup takes its place, and what was there is put aside; every page is told', () => {
    const { service, path, news } = serviceAtHand(damagedBook());
    const was = readFileSync(path);
    const info = ask({ service }, 'recovery.restore', { file: 'Workshop 2027-03-09.loamwright' });

    expect([info.path, news.at(-1)]).toEqual([path, { is: 'opened', opening: info.opening }]);
    const aside = join(dirname(path), `Workshop damaged ${today}.loamwright`);
    expect(readFileSync(aside).equals(was)).toBe(true);
    expect(ask({ service }, 'book.read', {}).records.tank).toHaveLength(12);
    expect(refused({ service }, 'recovery.restore', { file: basename(path) })?.says).toBe('The book is open.');
  });

  test('what it gives goes into a new book beside it, and the file stays as it is', () => {
    const { service, path } = serviceAtHand(damagedBook());
    const was = readFileSync(path);
    const info = ask({ service }, 'recovery.salvage', {});

    expect(info.name).toBe(`Workshop salvaged ${today}.loamwright`);
    expect(readFileSync(path).equals(was)).toBe(true);
    expect(ask({ service }, 'book.read', {}).records.line.length).toBeGreaterThan(100);
  });

  test('put aside, it has another name, and the backups are still there to restore', () => {
    const { service, path } = serviceAtHand(damagedBook());
    const { aside } = ask({ service }, 'recovery.putAside', {});

    expect([existsSync(path), existsSync(aside)]).toEqual([false, true]);
    expect(ask({ service }, 'recovery.read', {})).toMatchObject({ isThere: false, backups: [{ day: '2027-03-09' }] });
    expect(ask({ service }, 'file.new', { name: 'Second', start: 'empty' }).name).toBe('Second.loamwright');
  });

  test('mended by hand meanwhile, it is open at the next reading', () => {
    const { service, path } = serviceAtHand(damagedBook());
    const first = refused({ service }, 'book.read', {})?.says;
    copyFileSync(join(dirname(path), 'Workshop backups', 'Workshop 2027-03-09.loamwright'), path);

    expect([first, ask({ service }, 'book.read', {}).info.name]).toEqual([
      expect.stringContaining('is damaged') as unknown,
      'Workshop.loamwright',
    ]);
  });
});

describe('a start on the book used last', () => {
  test('that is gone makes no other in its place', () => {
    const folder = temporaryFolder();
    const [path, recentFile] = [join(folder, 'Gone.loamwright'), join(folder, 'recent.json')];
    rememberRecent(recentFile, path);
    const service = start(path, recentFile);
    if (!service.ok) throw new Error(service.fault);

    expect(ask({ service: service.value }, 'recovery.read', {})).toMatchObject({
      says: 'There is no book at Gone.loamwright.',
      backups: [],
      isThere: false,
    });
    service.value.close();
    expect(readdirSync(folder)).toEqual(['recent.json']);
  });

  test('that is another file by now leaves it alone', () => {
    const folder = temporaryFolder();
    const path = join(folder, 'Letter.loamwright');
    writeFileSync(path, 'Dear Ottoline');
    const service = start(path, join(folder, 'recent.json'));
    if (!service.ok) throw new Error(service.fault);
    const recovery = ask({ service: service.value }, 'recovery.read', {});
    service.value.close();

    expect([recovery.says, recovery.salvage]).toEqual(['Letter.loamwright is not a book.', undefined]);
    expect(readFileSync(path, 'utf8')).toBe('Dear Ottoline');
  });
});

describe('a book of one’s own that is gone', () => {
  test('is not made anew over its backups', () => {
    const path = damagedBook();
    rmSync(path);
    const service = start(path, join(temporaryFolder(), 'recent.json'));
    if (!service.ok) throw new Error(service.fault);

    expect(service.value.fault()).toMatch(/^There is no book at /);
    service.value.close();
    expect(openBook(path, { today })).toEqual({ ok: false, fault: { kind: 'missing' } });
  });
});
