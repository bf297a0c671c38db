import { mkdtempSync, rmSync } from 'node:fs';
import { connect, createServer } from 'node:net';
import { networkInterfaces, tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

import { largestBody } from '#electron/host/read-body.ts';
import { serveBook } from '#electron/host/serve-book.ts';

import { ask, callAsPage, goIn, hostAtHand, pageIn, startHost, temporaryFolder } from './host-at-hand.ts';
import type { HostAtHand } from './host-at-hand.ts';

const json = { 'content-type': 'application/json' };

describe('the page', () => {
  test('comes with its walls, and with a nonce that no other load has', async () => {
    const at = await hostAtHand();
    const authorization = await goIn(at);
    const [one, other] = [
      await ask(at.address, '/', { headers: { authorization } }),
      await ask(at.address, '/', { headers: { authorization } }),
    ];
    const nonce = /content="([\w+/=]{24})"/.exec(one.body)?.[1] ?? '';

    expect(one.headers['content-security-policy']).toBe(
      `default-src 'none'; script-src 'self'; style-src 'self' 'nonce-${nonce}'; img-src 'self' data:; font-src 'self'; connect-src 'self'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'`,
    );
    expect(one.headers).toMatchObject({
      'content-type': 'text/html; charset=utf-8',
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
      'cross-origin-embedder-policy': 'require-corp',
      'permissions-policy': expect.stringContaining('camera=()') as string,
      'cache-control': 'no-store',
    });
    expect(other.body).not.toContain(nonce);
  });

  test('calls every channel, and is told where the book stands', async () => {
    const at = await hostAtHand();
    const authorization = await goIn(at);
    const answer = await callAsPage(at.address, authorization, 'book.info', {});

    expect(answer.status).toBe(200);
    expect(JSON.parse(answer.body)).toMatchObject({ ok: true, value: { name: 'Workshop.loamwright', revision: 1 } });
  });

  test('hears of every edit as it is written', async () => {
    const at = await hostAtHand();
    const authorization = await goIn(at);
    const news = listenTo(at.address, authorization);
    const first = await news.next();
    const { opening } = JSON.parse(first) as { opening: string };
    const job = { ...(await firstJob(at.address, authorization)), id: 'J90' };
    const change = { label: 'job J90', added: [{ kind: 'job', record: job }], updated: [], removed: [] };
    await callAsPage(at.address, authorization, 'book.apply', { opening, onRevision: 1, change });

    expect(JSON.parse(first)).toEqual({ is: 'written', opening, revision: 1 });
    expect(JSON.parse(await news.next())).toEqual({ is: 'written', opening, revision: 2 });
    news.stop();
  });
});

describe('hostile requests', () => {
  let at: HostAtHand;
  let authorization = '';
  const folder = mkdtempSync(join(tmpdir(), 'loamwright-test-'));

  beforeAll(async () => {
    at = await startHost(folder);
    authorization = await goIn(at);
  });

  afterAll(async () => {
    await at.served.close();
    rmSync(folder, { recursive: true });
  });

  test.each(['evil.example', 'localhost', '127.0.0.1', '127.0.0.1:1', '127.0.0.1.evil.example', '[::1]'])(
    'another name for this address is refused: %j',
    async (host) => {
      expect((await ask(at.address, '/', { headers: { authorization, host } })).status).toBeGreaterThanOrEqual(400);
    },
  );

  test.each(['http://evil.example', 'null', 'http://127.0.0.1', 'http://127.0.0.1:1', 'https://127.0.0.1', ''])(
    'a page from elsewhere is refused: %j',
    async (origin) => {
      const called = await ask(at.address, '/call/book.info', {
        method: 'POST',
        headers: { authorization, origin, ...json },
        body: '{}',
      });
      const seen = await ask(at.address, '/events', { headers: { authorization, origin } });

      expect([called.status, seen.status]).toEqual([403, 403]);
    },
  );

  test('a call that does not say where it comes from is refused', async () => {
    const headers = { authorization, ...json };

    expect((await ask(at.address, '/call/book.info', { method: 'POST', headers, body: '{}' })).status).toBe(403);
  });

  test.each(['cross-site', 'same-site'])('what a browser calls %s is refused', async (site) => {
    const headers = { authorization, 'sec-fetch-site': site };

    expect((await ask(at.address, '/', { headers })).status).toBe(403);
  });

  test.each([
    '/../secret.html',
    '/..%2fsecret.html',
    '/%2e%2e/secret.html',
    '/%2e%2e%2fsecret.html',
    '/assets/../../secret.html',
    '/..%5csecret.html',
    '/..\\secret.html',
    '/../page-two/index.html',
    '//etc/passwd',
    '/etc/passwd',
    '/%2fetc%2fpasswd',
    '/index.html%00.js',
    '/%',
    '/%c0%ae%c0%ae/secret.html',
    '/notes.exe',
    '/assets',
    '/assets/',
    '/C:/Windows/win.ini',
    '/index.html/../../secret.html',
    '/Workshop.loamwright',
    `/${'long'.repeat(1250)}`,
  ])('%s leads nowhere', async (path) => {
    const answer = await ask(at.address, path, { headers: { authorization } });

    expect([answer.status, answer.body]).toEqual([404, 'There is no such page.\n']);
  });

  test.each([
    ['no JSON', '{"a":', 400],
    ['nothing', '', 400],
    ['bytes that are no text', Buffer.from([0x22, 0xff, 0xfe, 0x22]), 400],
    ['lists four million deep in one another', Buffer.alloc(4_000_000, '['), 400],
    ['too much', Buffer.alloc(largestBody + 1, 0x20), 413],
  ])('a call with %s is refused', async (_, body, status) => {
    const headers = { authorization, origin: at.address, ...json };

    expect((await ask(at.address, '/call/book.info', { method: 'POST', headers, body })).status).toBe(status);
    expect((await callAsPage(at.address, authorization, 'book.info', {})).status).toBe(200);
  });

  test('too much that hides its length is cut off', async () => {
    const headers = { authorization, origin: at.address, ...json, 'transfer-encoding': 'chunked' };
    const sent = ask(at.address, '/call/book.info', {
      method: 'POST',
      headers,
      body: Buffer.alloc(largestBody + 1, 0x20),
    });

    expect(
      await sent.then(
        ({ status }) => status,
        () => 'cut off',
      ),
    ).toSatisfy((end) => end === 413 || end === 'cut off');
  });

  test.each(['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data', ''])(
    'a call sent as %j, as a form of another page would be, is refused',
    async (type) => {
      const headers = { authorization, origin: at.address, 'content-type': type };

      expect((await ask(at.address, '/call/book.info', { method: 'POST', headers, body: '{}' })).status).toBe(415);
    },
  );

  test.each(['book.drop', 'constructor', '__proto__', 'book.read/..', ''])(
    'there is no channel %j',
    async (channel) => {
      expect((await callAsPage(at.address, authorization, channel, {})).status).toBe(404);
    },
  );

  test('what is no call of ours is refused in a sentence, and the log stays empty', async () => {
    const answer = await callAsPage(at.address, authorization, 'book.apply', { __proto__: { a: 1 }, change: [] });

    expect(JSON.parse(answer.body)).toMatchObject({ ok: false, fault: { readAgain: false } });
    expect(at.log).toEqual([]);
  });

  test.each(['PUT', 'DELETE', 'OPTIONS', 'PATCH'])('%s does nothing', async (method) => {
    const headers = { authorization, origin: at.address };

    expect((await ask(at.address, '/', { method, headers })).status).toBe(405);
  });

  test('nobody on the network reaches it', async () => {
    const port = Number(new URL(at.address).port);
    const others = Object.values(networkInterfaces()).flatMap((each) => each ?? []);
    for (const { address, internal, family } of others) {
      if (internal || family !== 'IPv4') continue;
      expect(await reaches(address, port)).toBe(false);
    }
  });
});

describe('serveBook', () => {
  test('a port that is taken is told, and the book is put away again', async () => {
    const taken = createServer();
    await new Promise<void>((done) => taken.listen(0, '127.0.0.1', done));
    const address = taken.address();
    const port = typeof address === 'object' && address ? address.port : 0;
    const folder = temporaryFolder();
    const options = {
      path: `${folder}/Workshop.loamwright`,
      today: () => '2027-03-10',
      page: pageIn(folder),
      recentFile: `${folder}/recent.json`,
      lastPlaceFile: `${folder}/last-place.json`,
      log: () => undefined,
    };

    expect(await serveBook({ ...options, port })).toEqual({
      ok: false,
      fault: { is: 'no port', says: `Port ${port} is taken by another program.` },
    });
    taken.close();
    await hostAtHand(temporaryFolder(), port);
  });
});

async function firstJob(address: string, authorization: string): Promise<Record<string, unknown>> {
  const { body } = await callAsPage(address, authorization, 'book.read', {});
  const { value } = JSON.parse(body) as { value: { records: { job: Record<string, unknown>[] } } };
  return value.records.job[0] ?? {};
}

/** The news one by one, as a page receives them. */
function listenTo(address: string, authorization: string) {
  const stop = new AbortController();
  const lines = readNews(address, authorization, stop.signal);
  return {
    next: async () => {
      const { value } = await lines.next();
      return value ?? '';
    },
    stop: () => stop.abort(),
  };
}

async function* readNews(
  address: string,
  authorization: string,
  signal: AbortSignal,
): AsyncGenerator<string, undefined> {
  const { body } = await fetch(`${address}/events`, { headers: { authorization }, signal });
  let text = '';
  for await (const part of body ?? []) {
    text += new TextDecoder().decode(part);
    const lines = text.split('\n');
    text = lines.pop() ?? '';
    for (const line of lines) if (line.startsWith('data: ')) yield line.slice(6);
  }
  return undefined;
}

function reaches(host: string, port: number): Promise<boolean> {
  return new Promise((said) => {
    const socket = connect({ host, port });
    const say = (reached: boolean) => {
      socket.destroy();
      said(reached);
    };
    socket.on('connect', () => say(true));
    socket.on('error', () => say(false));
  });
}
