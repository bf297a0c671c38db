import type { Result } from '#shared-calc/result.ts';
import type { News } from '#shared-calc/contract/news.ts';
import type { Refusal } from '#shared-calc/contract/channels.ts';
import type { Channel } from '#shared-calc/contract/channel-names.ts';
import type { IncomingMessage, ServerResponse } from 'node:http';

import { createReadStream, rmSync } from 'node:fs';
import { pipeline } from 'node:stream';

import type { BookFiles } from '#electron/service/book-files.ts';
import { isChannel } from '#shared-calc/contract/channel-names.ts';
import { entryPath } from '#shared-calc/contract/entry.ts';

import { guardHeaders } from './content-policy.ts';
import { entryAnswer } from './entry-page.ts';
import type { EventStream } from './event-stream.ts';
import { judgeEntry, judgeRequest } from './judge-request.ts';
import type { RequestHead } from './judge-request.ts';
import { readPageFile } from './page-files.ts';
import { readBody, readForm, type BodyFault } from './read-body.ts';
import { writeBody } from './write-body.ts';
import type { Sessions } from './sessions.ts';

/** What a host serves: the page's files and the service behind them. */
export interface Served {
  /** The folder of the built page. */
  readonly page: string;
  readonly answer: (channel: Channel, input: unknown) => Promise<Result<unknown, Refusal>>;
  readonly files: BookFiles;
  /** The state of the book, for a page that has just connected. */
  readonly now: () => News;
  /** Somebody has come with a link that lets nobody in any longer. */
  readonly onOldKey: (newLink: string) => void;
  readonly log: (text: string) => void;
}

export interface Standing extends Served {
  readonly address: string;
  readonly sessions: Sessions;
  readonly newLink: () => string;
  readonly events: EventStream;
}

const callPath = '/call/';
/** A copy of the open book, and the way in for one that a browser sends. */
const copyPath = '/copy';
const takeInPath = '/book';
const eventsPath = '/events';
const noSession = 'Open the link that Loamwright wrote when it was started. A link lets one browser in, once.';
const oldKey =
  'This link has let a browser in, or is older than a minute. Loamwright has written a new one where it was started.';

/** Answers one request: checks its origin, then its path, then, but for files of the page, its session. */
export async function answerRequest(
  standing: Standing,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const { method } = request;
  const { path, query } = askedFor(request);
  const enters = method === 'POST' && path === entryPath;
  const wrong = (enters ? judgeEntry : judgeRequest)(askedBy(request), standing.address);
  if (wrong !== undefined) return say(response, 403, wrong);
  if (enters) return letIn(standing, request, response);
  if (method === 'POST') return answerPost(standing, request, response, { path, query });
  if (method !== 'GET' && method !== 'HEAD') return say(response, 405, 'This cannot be done here.');
  return show(standing, path, request, response);
}

function askedFor({ url = '' }: IncomingMessage): { readonly path: string; readonly query: string } {
  const [path = '', query = ''] = url.split('?', 2);
  return { path, query };
}

function answerPost(
  standing: Standing,
  request: IncomingMessage,
  response: ServerResponse,
  { path, query }: { readonly path: string; readonly query: string },
): Promise<void> | void {
  if (!isIn(standing, request)) return say(response, 403, noSession);
  if (path.startsWith(callPath)) return answerCall(standing, request, response);
  if (path === takeInPath) return takeBookIn(standing, request, response, query);
  return say(response, 405, 'This cannot be done here.');
}

function isIn({ sessions }: Standing, { headers }: IncomingMessage): boolean {
  return sessions.isIn(headers.authorization);
}

function askedBy({ headers, method = '' }: IncomingMessage): RequestHead {
  const site = headers['sec-fetch-site'];
  return { method, host: headers.host, origin: headers.origin, site: typeof site === 'string' ? site : undefined };
}

/** The files of the page hold nothing of the book, and a browser that loads them cannot say who it is. */
function show(standing: Standing, path: string, request: IncomingMessage, response: ServerResponse): void {
  const [listens, copies] = [path === eventsPath, path === copyPath];
  if (listens || copies) {
    if (!isIn(standing, request)) return say(response, 403, noSession);
    if (request.method === 'GET') return listens ? listen(standing, response) : sendCopy(standing, response);
  }
  const file = readPageFile(standing.page, path);
  response.writeHead(file.status, file.headers).end(request.method === 'HEAD' ? undefined : file.body);
}

/** The page posts the key of its link and gets the secret; the file that opens a browser gets a page that stores it. */
async function letIn(standing: Standing, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const { sessions, address, newLink, onOldKey } = standing;
  const form = await readForm(request);
  if (!form.ok) return sayAndClose(response, form.fault);
  const state = sessions.takeKey(form.value.get('key') ?? '');
  if (state === 'old') onOldKey(newLink());
  if (state !== 'taken') return say(response, 403, state === 'old' ? oldKey : noSession);
  if (request.headers.origin === address) return say(response, 200, sessions.secret);
  const { headers, body } = entryAnswer(sessions.secret);
  response.writeHead(200, headers).end(body);
}

async function answerCall(standing: Standing, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const channel = request.url?.slice(callPath.length) ?? '';
  if (!isChannel(channel)) return say(response, 404, 'There is no such channel.');
  const body = await readBody(request);
  if (!body.ok) return sayAndClose(response, body.fault);
  answerJson(response, await standing.answer(channel, body.value));
}

function answerJson(response: ServerResponse, answer: unknown): void {
  response.writeHead(200, {
    ...guardHeaders,
    'content-type': 'application/json; charset=utf-8',
    'cache-control': 'no-store',
  });
  response.end(JSON.stringify(answer));
}

function sendCopy({ files, log }: Standing, response: ServerResponse): void {
  const part = files.partPath();
  const saved = files.saveCopy(part, { replace: true });
  if (!saved.ok) return say(response, 409, saved.fault.says);
  response.writeHead(200, {
    ...guardHeaders,
    'content-type': 'application/octet-stream',
    'content-disposition': `attachment; filename*=UTF-8''${encodeURIComponent(`Copy of ${files.name()}`)}`,
    'cache-control': 'no-store',
  });
  pipeline(createReadStream(part), response, (error) => {
    if (error) log(`a copy was not sent whole: ${error.message}`);
    rmSync(part, { force: true });
  });
}

async function takeBookIn(
  { files }: Standing,
  request: IncomingMessage,
  response: ServerResponse,
  query: string,
): Promise<void> {
  const part = files.partPath();
  const written = await writeBody(request, part);
  if (!written.ok) return sayAndClose(response, written.fault);
  const name = new URLSearchParams(query).get('name') ?? '';
  answerJson(response, files.takeIn(part, name));
}

function listen({ events, now }: Standing, response: ServerResponse): void {
  if (!events.add(response, now())) say(response, 503, 'Too many pages are open.');
}

/** Refuses a body that was not read to its end: the rest must not be parsed as the next request. */
function sayAndClose(response: ServerResponse, { status, says }: BodyFault): void {
  response.setHeader('connection', 'close');
  say(response, status, says);
}

function say(response: ServerResponse, status: number, says: string): void {
  response.writeHead(status, {
    ...guardHeaders,
    'content-type': 'text/plain; charset=utf-8',
    'cache-control': 'no-store',
  });
  response.end(`${says}\n`);
}
