import { describe, expect, test } from 'vitest';
import { ask, bearing, bring, callAsPage, enter, goIn, hostAtHand } from './host-at-hand.ts';

const json = { 'content-type': 'application/json' };

describe('the link', () => {
  test('lets one browser in, once', async () => {
    const at = await hostAtHand();
    const link = at.served.newLink();
    const first = await enter(link);

    expect([first.status, first.headers['set-cookie']]).toEqual([200, undefined]);
    expect((await callAsPage(at.address, bearing(first), 'book.info', {})).status).toBe(200);
    expect(await enter(link)).toMatchObject({
      status: 403,
      body: expect.stringContaining('has let a browser in, or is older than a minute') as string,
    });
  });

  test('one that was used brings a new one to the person who started it, and one that is made up does not', async () => {
    const at = await hostAtHand();
    const link = at.served.newLink();
    for (const each of [link, link, `${at.address}/?key=${'a'.repeat(43)}`]) await enter(each);

    expect(at.links.map((each) => each.replace(/[\w-]{43}$/, 'KEY'))).toEqual([`${at.address}/?key=KEY`]);
    expect((await enter(at.links[0] ?? '')).status).toBe(200);
  });

  test('looking at it does not use it up', async () => {
    const at = await hostAtHand();
    const link = new URL(at.served.newLink());
    for (const method of ['HEAD', 'GET', 'HEAD']) await ask(at.address, link.pathname + link.search, { method });

    expect((await enter(link.href)).status).toBe(200);
  });

  test('each link has a key of its own, and a wrong key opens nothing', async () => {
    const at = await hostAtHand();

    expect(at.served.newLink()).not.toBe(at.served.newLink());
    for (const key of ['', 'wrong', 'a'.repeat(43), 'a'.repeat(2000)]) {
      const answer = await bring(at.address, key, { origin: at.address });
      expect([answer.status, /[\w-]{43}/.test(answer.body)]).toEqual([key.length > 1000 ? 413 : 403, false]);
    }
  });

  test('a file that opens the browser stores the secret for its tab, and lets nothing else of the page run', async () => {
    const at = await hostAtHand();
    const key = new URL(at.served.newLink()).searchParams.get('key') ?? '';
    const { status, headers, body } = await bring(at.address, key, { origin: 'null', 'sec-fetch-site': 'cross-site' });
    const secret = /'([\w-]{43})'/.exec(body)?.[1] ?? '';

    expect([status, headers['cache-control']]).toEqual([200, 'no-store']);
    expect(headers['content-security-policy']).toMatch(/^default-src 'none'; script-src 'nonce-[\w+/=]{24}';/);
    expect((await callAsPage(at.address, `Bearer ${secret}`, 'book.info', {})).status).toBe(200);
  });

  test.each(['http://evil.example', 'http://127.0.0.1:1', ''])(
    'a page of %j with a key that it has seen somewhere is refused, and the key stays good',
    async (origin) => {
      const at = await hostAtHand();
      const link = at.served.newLink();
      const key = new URL(link).searchParams.get('key') ?? '';

      expect((await bring(at.address, key, { origin })).status).toBe(403);
      expect((await enter(link)).status).toBe(200);
    },
  );

  test('without having come in by a link, nobody hears the news or gets anything of the book', async () => {
    const at = await hostAtHand();
    const secret = (await goIn(at)).replace('Bearer ', '');
    const cookie = `loamwright-${new URL(at.address).port}=${secret}`;
    for (const headers of [{}, { authorization: 'Bearer x' }, { authorization: secret }, { cookie }]) {
      for (const [path, method] of [
        ['/events', 'GET'],
        ['/events', 'HEAD'],
        ['/copy', 'GET'],
        ['/copy', 'HEAD'],
        ['/call/book.read', 'POST'],
        ['/book?name=x', 'POST'],
      ] as const) {
        const answer = await ask(at.address, path, { method, headers: { origin: at.address, ...json, ...headers } });
        expect([path, answer.status]).toEqual([path, 403]);
      }
    }
  });
});
