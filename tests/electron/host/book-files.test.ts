import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { callAsPage, goIn, hostAtHand, type HostAtHand } from './host-at-hand.ts';

const book = 'application/octet-stream';

/** Sends bytes as the page would, or with other headers. */
async function sendBook(at: HostAtHand, body: string | Buffer, headers: Readonly<Record<string, string>>) {
  const answer = await fetch(`${at.address}/book?name=${encodeURIComponent('../Ferry.loamwright')}`, {
    method: 'POST',
    headers: { 'content-type': book, origin: at.address, ...headers },
    body: new Uint8Array(Buffer.from(body)),
  });
  return { status: answer.status, body: await answer.text() };
}

describe('a copy of the book', () => {
  test('is sent whole to the page alone, and nothing of it stays', async () => {
    const at = await hostAtHand();
    const authorization = await goIn(at);
    const answer = await fetch(`${at.address}/copy`, { headers: { authorization } });
    const bytes = Buffer.from(await answer.arrayBuffer());

    expect([answer.status, answer.headers.get('content-disposition')]).toEqual([
      200,
      "attachment; filename*=UTF-8''Copy%20of%20Workshop.loamwright",
    ]);
    expect(bytes.subarray(0, 15).toString()).toBe('SQLite format 3');
    await expect.poll(() => readdirSync(at.folder).filter((name) => name.startsWith('.part'))).toEqual([]);
    expect((await fetch(`${at.address}/copy`)).status).toBe(403);
  });
});

describe('a book that a browser sends', () => {
  test('is taken in under its name, and opened', async () => {
    const at = await hostAtHand();
    const authorization = await goIn(at);
    const copy = Buffer.from(await (await fetch(`${at.address}/copy`, { headers: { authorization } })).arrayBuffer());
    const sent = await sendBook(at, copy, { authorization });

    expect(JSON.parse(sent.body)).toMatchObject({ ok: true, value: { name: 'Ferry.loamwright' } });
    expect(readdirSync(at.folder)).toContain('Ferry.loamwright');
    const info = await callAsPage(at.address, authorization, 'book.info', {});
    expect(info.body).toContain('Ferry.loamwright');
  });

  test('is refused where it is none, and the open one stays', async () => {
    const at = await hostAtHand();
    const authorization = await goIn(at);
    const before = readFileSync(join(at.folder, 'Workshop.loamwright'));

    expect(JSON.parse((await sendBook(at, 'no book', { authorization })).body)).toEqual({
      ok: false,
      fault: { says: 'Ferry.loamwright is not a book.', readAgain: false },
    });
    expect(readFileSync(join(at.folder, 'Workshop.loamwright'))).toEqual(before);
  });

  test('is taken from the page alone, and only as a file', async () => {
    const at = await hostAtHand();
    const authorization = await goIn(at);

    expect((await sendBook(at, 'x', {})).status).toBe(403);
    expect((await sendBook(at, 'x', { authorization, origin: 'http://evil.example' })).status).toBe(403);
    expect((await sendBook(at, 'x', { authorization, 'content-type': 'text/plain' })).status).toBe(415);
    expect(readdirSync(at.folder).filter((name) => name.startsWith('.part'))).toEqual([]);
  });
});
