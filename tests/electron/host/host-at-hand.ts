import { request } from 'node:http';
import type { IncomingHttpHeaders, OutgoingHttpHeaders } from 'node:http';
import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';

import { serveBook } from '#electron/host/serve-book.ts';
import type { ServedBook } from '#electron/host/serve-book.ts';
import { writeDemoBook } from '#tests/write-demo-book.ts';

export interface Answer {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly body: string;
}

export interface Asking {
  readonly method?: string;
  readonly headers?: OutgoingHttpHeaders;
  readonly body?: string | Buffer;
}

export interface HostAtHand {
  readonly address: string;
  readonly folder: string;
  readonly served: ServedBook;
  readonly log: readonly string[];
  /** The links that were written for the person who started it, because an old one was opened. */
  readonly links: readonly string[];
}

export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'loamwright-test-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** A small page with the parts of a built one, and a secret file next to it. */
export function pageIn(folder: string): string {
  const page = join(folder, 'page');
  mkdirSync(join(page, 'assets'), { recursive: true });
  writeFileSync(join(page, 'index.html'), '<!doctype html><meta name="style-nonce" content="" /><title>Page</title>');
  writeFileSync(join(page, 'assets/index-AB12.js'), 'export {};\n');
  writeFileSync(join(page, 'assets/look.css'), 'body { color: black; }\n');
  writeFileSync(join(page, 'notes.exe'), 'not of the page');
  writeFileSync(join(folder, 'secret.html'), 'beside the page');
  mkdirSync(join(folder, 'page-two'));
  writeFileSync(join(folder, 'page-two/index.html'), 'another folder');
  return page;
}

export async function hostAtHand(folder = temporaryFolder(), port?: number): Promise<HostAtHand> {
  const at = await startHost(folder, port);
  onTestFinished(at.served.close);
  return at;
}

/** A host over a small demo book that runs until it is closed, for many requests that change nothing. */
export async function startHost(folder: string, port?: number): Promise<HostAtHand> {
  const log: string[] = [];
  const links: string[] = [];
  const path = join(folder, 'Workshop.loamwright');
  if (!existsSync(path)) writeDemoBook(path, '2027-03-10');
  const served = await serveBook({
    path,
    today: () => '2027-03-10',
    page: pageIn(folder),
    port,
    recentFile: join(folder, 'recent.json'),
    lastPlaceFile: join(folder, 'last-place.json'),
    log: (text) => log.push(text),
    onOldKey: (link) => links.push(link),
  });
  if (!served.ok) throw new Error(served.fault.says);
  return { address: served.value.address, folder, served: served.value, log, links };
}

/** Requests a path exactly as given, without normalising it. */
export function ask(
  address: string,
  path: string,
  { method = 'GET', headers = {}, body }: Asking = {},
): Promise<Answer> {
  const { port, host } = new URL(address);
  return new Promise((answered, failed) => {
    const sent = request(
      { host: '127.0.0.1', port, method, path, headers: { host, ...headers }, agent: false },
      (response) => {
        const parts: Buffer[] = [];
        response.on('data', (part: Buffer) => parts.push(part));
        response.on('error', failed);
        response.on('end', () =>
          answered({
            status: response.statusCode ?? 0,
            headers: response.headers,
            body: Buffer.concat(parts).toString('utf8'),
          }),
        );
      },
    );
    sent.on('error', failed);
    sent.end(body);
  });
}

/** Brings a link's key as the page does, and returns the secret. */
export async function enter(link: string): Promise<Answer> {
  const { origin, searchParams } = new URL(link);
  return bring(origin, searchParams.get('key') ?? '', { origin });
}

/** Brings a key with other headers. */
export function bring(address: string, key: string, headers: OutgoingHttpHeaders): Promise<Answer> {
  const form = { 'content-type': 'application/x-www-form-urlencoded', ...headers };
  return ask(address, '/enter', { method: 'POST', headers: form, body: `key=${key}` });
}

/** Comes in by a new link; returns the header that every call then has. */
export async function goIn({ served }: Pick<HostAtHand, 'served'>): Promise<string> {
  return bearing(await enter(served.newLink()));
}

export function bearing({ body }: Pick<Answer, 'body'>): string {
  return `Bearer ${body.trim()}`;
}

/** Calls a channel as the page does. */
export function callAsPage(address: string, authorization: string, channel: string, input: unknown): Promise<Answer> {
  const headers = { authorization, origin: address, 'content-type': 'application/json' };
  return ask(address, `/call/${channel}`, { method: 'POST', headers, body: JSON.stringify(input) });
}
