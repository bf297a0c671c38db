import { spawn } from 'node:child_process';
import type { ChildProcess } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, onTestFinished, test } from 'vitest';

import { openBook } from '#electron/book/open-book.ts';

import { bearing, callAsPage, enter, pageIn, temporaryFolder } from './host-at-hand.ts';

const program = fileURLToPath(new URL('./serve-for-test.ts', import.meta.url));

describe('a program that is killed in the middle of edits', () => {
  test('keeps every edit that it had said was kept, and its pages find it again', async () => {
    const folder = temporaryFolder();
    const first = await start(folder);
    const authorization = await goInBy(first.link);
    const { address } = first;
    const { opening, job } = await lookAt(address, authorization);
    const saved: string[] = [];
    const edits = writeUntilRefused(address, authorization, { opening, job }, saved);
    await waitFor(() => saved.length >= 5);
    first.child.kill('SIGKILL');
    await edits;

    const again = await start(folder);
    expect(again.address).toBe(address);
    const now = await lookAt(address, authorization);
    expect(now.opening).not.toBe(opening);
    expect(now.jobs).toEqual(expect.arrayContaining(saved));
    // At most the one pending edit was stored without its answer having arrived.
    expect(now.jobs.length - 1 - saved.length).toBeLessThanOrEqual(1);
    expect(now.revision).toBe(now.jobs.length);
    again.child.kill('SIGKILL');
    await again.ended;
    const book = openBook(join(folder, 'Workshop.loamwright'), { today: '2027-03-10' });
    expect(book.ok && book.value.check()).toMatchObject({ ok: true });
    if (book.ok) book.value.close();
  });

  test('one that is ended with Ctrl+C puts the book away, and forgets who was in', async () => {
    const folder = temporaryFolder();
    const first = await start(folder);
    const authorization = await goInBy(first.link);
    expect(existsSync(join(folder, 'last-place.json'))).toBe(true);
    first.child.kill('SIGINT');

    expect(await first.ended).toBe(0);
    expect(existsSync(join(folder, 'Workshop.loamwright-wal'))).toBe(false);
    expect(existsSync(join(folder, 'last-place.json'))).toBe(false);
    const again = await start(folder);
    expect((await callAsPage(again.address, authorization, 'book.info', {})).status).toBe(403);
  });
});

interface Started {
  readonly child: ChildProcess;
  readonly link: string;
  readonly address: string;
  readonly ended: Promise<number | null>;
}

async function start(folder: string): Promise<Started> {
  if (!existsSync(join(folder, 'page'))) pageIn(folder);
  const child = spawn(process.execPath, [program, folder], { stdio: ['ignore', 'pipe', 'inherit'] });
  const ended = new Promise<number | null>((done) => child.on('exit', done));
  onTestFinished(async () => {
    child.kill('SIGKILL');
    await ended;
  });
  const link = await new Promise<string>((said, failed) => {
    child.stdout.on('data', (part: Buffer) => said(part.toString('utf8').trim()));
    child.on('exit', () => failed(new Error('ended before it was ready')));
  });
  return { child, link, address: new URL(link).origin, ended };
}

async function goInBy(link: string): Promise<string> {
  return bearing(await enter(link));
}

interface Look {
  readonly opening: string;
  readonly revision: number;
  readonly job: Record<string, unknown>;
  readonly jobs: readonly string[];
}

async function lookAt(address: string, authorization: string): Promise<Look> {
  const { body } = await callAsPage(address, authorization, 'book.read', {});
  const { value } = JSON.parse(body) as {
    value: {
      info: { opening: string; revision: number };
      records: { job: (Record<string, unknown> & { id: string })[] };
    };
  };
  const { info, records } = value;
  return { ...info, job: records.job[0] ?? {}, jobs: records.job.map(({ id }) => id) };
}

/** Adds one job after the other, each after the previous one was confirmed, until nobody answers. */
async function writeUntilRefused(
  address: string,
  authorization: string,
  { opening, job }: Pick<Look, 'opening' | 'job'>,
  kept: string[],
): Promise<void> {
  for (let serial = 1; ; serial += 1) {
    const id = `J${1000 + serial}`;
    const change = { label: `job ${id}`, added: [{ kind: 'job', record: { ...job, id } }], updated: [], removed: [] };
    try {
      const { status } = await callAsPage(address, authorization, 'book.apply', {
        opening,
        onRevision: serial,
        change,
      });
      if (status === 200) kept.push(id);
    } catch {
      return;
    }
  }
}

async function waitFor(is: () => boolean): Promise<void> {
  while (!is()) await new Promise((done) => setImmediate(done));
}
