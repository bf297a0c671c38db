import { spawn } from 'node:child_process';
import { chmodSync } from 'node:fs';
import type { OutgoingHttpHeaders } from 'node:http';
import { createServer } from 'node:http';
import path from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import { makeDemoBook } from '#electron/book/seed-demo.ts';
import {
  ask,
  bring,
  callAsPage,
  goIn,
  hostAtHand,
  temporaryFolder,
  type HostAtHand,
} from '#tests/electron/host/host-at-hand.ts';

const json = { 'content-type': 'application/json' };

interface Forged {
  readonly what: string;
  readonly path: string;
  readonly method?: string;
  readonly headers: OutgoingHttpHeaders;
}

/** Everything that a page or program that is not ours may try, with and without the secret. */
function forgedRequests({ address }: HostAtHand, authorization: string): readonly Forged[] {
  const secret = authorization.replace('Bearer ', '');
  const { port } = new URL(address);
  const ours = { origin: address, authorization, ...json };
  const ways = [
    { path: '/call/book.read', method: 'POST' },
    { path: '/call/book.apply', method: 'POST' },
    { path: '/book?name=x', method: 'POST' },
    { path: '/events' },
    { path: '/copy' },
    { path: '/events', method: 'HEAD' },
    { path: '/copy', method: 'HEAD' },
  ];
  const heads: readonly (readonly [what: string, headers: OutgoingHttpHeaders])[] = [
    ...['localhost', `localhost:${port}`, '127.0.0.1', '127.0.0.1:1', `[::1]:${port}`, `evil.example:${port}`].map(
      (host) => [`host ${host}`, { ...ours, host }] as const,
    ),
    ...['http://evil.example', 'null', `http://localhost:${port}`, 'http://127.0.0.1:1', 'file://', ''].map(
      (origin) => [`origin ${origin}`, { ...ours, origin }] as const,
    ),
    ...['cross-site', 'same-site'].map((site) => [site, { ...ours, 'sec-fetch-site': site }] as const),
    ...[
      {},
      { authorization: '' },
      { authorization: secret },
      { authorization: `Basic ${Buffer.from(`:${secret}`).toString('base64')}` },
      { authorization: `Bearer ${secret.toLowerCase()}` },
      { authorization: `Bearer ${secret}, Bearer x` },
      { cookie: `loamwright-${port}=${secret}` },
      { cookie: `loamwright session=${secret}` },
      { 'x-authorization': authorization },
    ].map((headers) => [JSON.stringify(Object.keys(headers)), { origin: address, ...json, ...headers }] as const),
  ];
  return heads.flatMap(([what, headers]) => ways.map((way) => ({ what, headers, ...way })));
}

describe('strangers on the same computer', () => {
  test('no forged request gets anything of the book, or changes it', async () => {
    const at = await hostAtHand();
    const authorization = await goIn(at);
    const before = (await callAsPage(at.address, authorization, 'book.info', {})).body;
    const forged = forgedRequests(at, authorization);
    const through: unknown[] = [];
    for (const { what, path: way, ...asking } of forged) {
      const { status, body } = await ask(at.address, way, {
        ...asking,
        ...(asking.method === 'POST' && { body: '{}' }),
      });
      if (status < 400 || body.includes('revision')) through.push([what, way, status]);
    }
    process.stdout.write(`${forged.length} forged requests, ${through.length} let through\n`);

    expect(forged.length).toBeGreaterThan(150);
    expect(through).toEqual([]);
    expect((await callAsPage(at.address, authorization, 'book.info', {})).body).toBe(before);
  });

  test('a thousand guessed keys let nobody in', async () => {
    const at = await hostAtHand();
    const statuses = new Set<number>();
    for (let turn = 0; turn < 1000; turn += 1) {
      statuses.add((await bring(at.address, `${turn}`.padStart(43, 'A'), { origin: at.address })).status);
    }

    expect([...statuses]).toEqual([403]);
  });

  test('a server on another port of this address is sent nothing by which it could come in', async () => {
    const at = await hostAtHand();
    const { headers } = await ask(at.address, '/');
    const entered = await bring(at.address, new URL(at.served.newLink()).searchParams.get('key') ?? '', {
      origin: at.address,
    });
    expect([headers['set-cookie'], entered.headers['set-cookie']]).toEqual([undefined, undefined]);
    const other = createServer().listen(0, '127.0.0.1');
    onTestFinished(() => void other.close());
    await new Promise((done) => other.once('listening', done));
    const address = other.address();
    const port = typeof address === 'object' ? address?.port : undefined;
    const from = { origin: `http://127.0.0.1:${port}`, 'sec-fetch-site': 'same-site' };

    expect((await ask(at.address, '/events', { headers: from })).status).toBe(403);
    expect((await ask(at.address, '/', { headers: from })).status).toBe(403);
  });
});

describe.runIf(process.getuid?.() === 0)('another user of this computer', () => {
  test('reads no file of the workshop, no command line with a key, and gets nothing from the address', async () => {
    const folder = temporaryFolder();
    const made = makeDemoBook(path.join(folder, 'Workshop.loamwright'), { today: '2027-03-10', backups: false });
    if (made.ok) made.value.close();
    const at = await hostAtHand(folder);
    const authorization = await goIn(at);
    // The folder is as open as it can be: the files stand for themselves.
    chmodSync(at.folder, 0o755);
    const files = ['Workshop.loamwright', 'last-place.json'].map((name) => path.join(at.folder, name));
    const look = `
      process.setgid(65534); process.setuid(65534);
      const { readFileSync, readdirSync } = require('node:fs');
      const secret = readFileSync(0, 'utf8');
      const tried = [];
      const attempt = (what, get) => { try { tried.push([what, get()]); } catch { tried.push([what, null]); } };
      for (const file of ${JSON.stringify(files)}) attempt(file, () => readFileSync(file).length);
      const lines = readdirSync('/proc').filter((pid) => /^\\d+$/.test(pid));
      const said = lines.map((pid) => { try { return readFileSync('/proc/' + pid + '/cmdline', 'utf8'); } catch { return ''; } });
      attempt('command lines', () => said.some((line) => line.includes(secret)) ? 1 : null);
      attempt('memory', () => readFileSync('/proc/${process.pid}/environ').length);
      fetch('${at.address}/copy', { headers: { origin: '${at.address}' } }).then((answer) => {
        tried.push(['address', answer.ok ? 1 : null]);
        console.log(JSON.stringify(tried));
      });
    `;
    const child = spawn(process.execPath, ['-e', look], { stdio: ['pipe', 'pipe', 'inherit'] });
    child.stdin.end(authorization.slice('Bearer '.length));
    let said = '';
    child.stdout.on('data', (part: Buffer) => (said += part.toString('utf8')));
    await new Promise((done) => child.on('close', done));
    const tried: unknown = JSON.parse(said);

    expect(tried).toEqual([...files, 'command lines', 'memory', 'address'].map((what) => [what, null]));
  });
});
