import type { Result } from '#shared-calc/result.ts';
import type { News } from '#shared-calc/contract/news.ts';
import type { Refusal } from '#shared-calc/contract/channels.ts';
import type { Channel } from '#shared-calc/contract/channel-names.ts';
import type { IncomingMessage, ServerResponse } from 'node:http';

import { createReadStream, rmSync } from 'node:fs';
import { pipeline } from 'node:stream';

import type { BookFiles } from '#electron/service/book-files.ts';
import { isChannel } from '#shared-calc/contract/channel-names.ts';

import { guardHeaders } from './content-policy.ts';
import type { EventStream } from './event-stream.ts';
import { judgeRequest } from './judge-request.ts';
import type { RequestHead } from './judge-request.ts';
import { readPageFile } from './page-files.ts';
import { readBody } from './read-body.ts';
import { writeBody } from './write-body.ts';
import type { Sessions } from './sessions.ts';

/** What a host serves: the page's files and the service behind them. */
export interface Served {
  /** The folder of the built page. */
  readonly page: string;
  readonly call: (channel: Channel, input: unknown) => Result<unknown, Refusal>;
  readonly files: BookFiles;
  /** The state of the book, for a page that has just connected. */
  readonly now: () => News;
  readonly log: (text: string) => void;
}

export interface Standing extends Served {
  readonly address: string;
  readonly sessions: Sessions;
  readonly events: EventStream;
}

const callPath = '/call/';
/** A copy of the open book, and the way in for one that a browser sends. */
const copyPath = '/copy';
const takeInPath = '/book';
const noSession = 'Open the link that Loamwright wrote when it was started. A link lets one browser in, once.';

/** Answers one request: checks its origin, then its session, then its path. */
export async function answerRequest(
  standing: Standing,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const wrong = judgeRequest(askedBy(request), standing.address);
  if (wrong !== undefined) return say(response, 403, wrong);
  const { method } = request;
  const [path = '', query = ''] = (request.url ?? '').split('?', 2);
  if (method === 'POST') return answerPost(standing, request, response, { path, query });
  if (method !== 'GET' && method !== 'HEAD') return say(response, 405, 'This cannot be done here.');
  const key = keyOf(path, query);
  return key === null ? show(standing, path, request, response) : letIn(standing, request, response, key);
}

function answerPost(
  standing: Standing,
  request: IncomingMessage,
  response: ServerResponse,
  { path, query }: { readonly path: string; readonly query: string },
): Promise<void> | void {
  if (path.startsWith(callPath)) return answerCall(standing, request, response);
  if (path === takeInPath) return takeBookIn(standing, request, response, query);
  return say(response, 405, 'This cannot be done here.');
}

function keyOf(path: string, query: string): string | null {
  return path === '/' ? new URLSearchParams(query).get('key') : null;
}

function askedBy({ headers, method = '' }: IncomingMessage): RequestHead {
  const site = headers['sec-fetch-site'];
  return { method, host: headers.host, origin: headers.origin, site: typeof site === 'string' ? site : undefined };
}

function show(standing: Standing, path: string, request: IncomingMessage, response: ServerResponse): void {
  const { sessions, page } = standing;
  if (!sessions.isIn(request.headers.cookie)) return say(response, 403, noSession);
  if (path === '/events' && request.method === 'GET') return listen(standing, response);
  if (path === copyPath && request.method === 'GET') return sendCopy(standing, response);
  const file = readPageFile(page, path);
  response.writeHead(file.status, file.headers).end(request.method === 'HEAD' ? undefined : file.body);
}

/** Redirects to a link without the key, so that the key is not stored in the browser history. */
function letIn({ sessions }: Standing, request: IncomingMessage, response: ServerResponse, key: string): void {
  const isTaken = sessions.takeKey(key);
  if (!isTaken && !sessions.isIn(request.headers.cookie)) return say(response, 403, noSession);
  const cookie = isTaken ? { 'set-cookie': sessions.cookie } : {};
  response.writeHead(303, { ...guardHeaders, ...cookie, location: '/', 'cache-control': 'no-store' }).end();
}

async function answerCall(standing: Standing, request: IncomingMessage, response: ServerResponse): Promise<void> {
  if (!standing.sessions.isIn(request.headers.cookie)) return say(response, 403, noSession);
  const channel = request.url?.slice(callPath.length) ?? '';
  if (!isChannel(channel)) return say(response, 404, 'There is no such channel.');
  const body = await readBody(request);
  if (!body.ok) {
    // The unread rest of the request must not be parsed as the next request.
    response.setHeader('connection', 'close');
    return say(response, body.fault.status, body.fault.says);
  }
  answerJson(response, standing.call(channel, body.value));
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
  { sessions, files }: Standing,
  request: IncomingMessage,
  response: ServerResponse,
  query: string,
): Promise<void> {
  if (!sessions.isIn(request.headers.cookie)) return say(response, 403, noSession);
  const part = files.partPath();
  const written = await writeBody(request, part);
  if (!written.ok) {
    response.setHeader('connection', 'close');
    return say(response, written.fault.status, written.fault.says);
  }
  const name = new URLSearchParams(query).get('name') ?? '';
  answerJson(response, files.takeIn(part, name));
}

function listen({ events, now }: Standing, response: ServerResponse): void {
  if (!events.add(response, now())) say(response, 503, 'Too many pages are open.');
}

function say(response: ServerResponse, status: number, says: string): void {
  response.writeHead(status, {
    ...guardHeaders,
    'content-type': 'text/plain; charset=utf-8',
    'cache-control': 'no-store',
  });
  response.end(`${says}\n`);
}
