import { createServer } from 'node:http';
import type { Server } from 'node:http';

import type { News } from '#shared-calc/contract/news.ts';
import { failed, ok } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';

import { answerRequest, type Served } from './answer-request.ts';
import { openEventStream } from './event-stream.ts';
import { newSecret, openSessions, type Sessions } from './sessions.ts';

export interface Place {
  /** Any free port by default. */
  readonly port?: number | undefined;
  /** The secret of an earlier run, so that pages with a session stay logged in. */
  readonly secret?: string | undefined;
}

export interface Host {
  /** `http://127.0.0.1:41234` */
  readonly address: string;
  readonly port: number;
  readonly secret: string;
  /** A link that lets one browser in, once, within a minute. */
  readonly newLink: () => string;
  readonly newKey: Sessions['newKey'];
  readonly tell: (news: News) => void;
  readonly close: () => Promise<void>;
}

/** Serves page and service on the loopback address, only to browsers that have a link. */
export async function openHost(served: Served, place: Place = {}): Promise<Result<Host, string>> {
  const events = openEventStream();
  const server = createServer({ requestTimeout: 60_000, headersTimeout: 20_000 });
  const port = await listen(server, place.port ?? 0);
  if (!port.ok) {
    events.close();
    return port;
  }
  const address = `http://127.0.0.1:${port.value}`;
  const sessions = openSessions(place.secret ?? newSecret());
  const newLink = () => `${address}/?key=${sessions.newKey()}`;
  server.on('request', (request, response) => {
    answerRequest({ ...served, address, sessions, newLink, events }, request, response).catch((error: unknown) => {
      served.log(`a request could not be answered: ${String(error)}`);
      response.destroy();
    });
  });
  return ok({
    address,
    port: port.value,
    secret: sessions.secret,
    newLink,
    newKey: sessions.newKey,
    tell: events.tell,
    close: async () => {
      events.close();
      sessions.close();
      await close(server);
    },
  });
}

/** Listens on a port of the loopback address only. */
function listen(server: Server, port: number): Promise<Result<number, string>> {
  return new Promise((settle) => {
    server.once('error', (error) => settle(failed(sayListenFault(error, port))));
    server.listen({ port, host: '127.0.0.1', exclusive: true }, () => {
      const address = server.address();
      settle(typeof address === 'object' && address ? ok(address.port) : failed('This machine gives no address.'));
    });
  });
}

function sayListenFault(error: NodeJS.ErrnoException, port: number): string {
  if (error.code === 'EADDRINUSE') return `Port ${port} is taken by another program.`;
  if (error.code === 'EACCES') return `Port ${port} may not be used by this user.`;
  return `This machine gives no address (${error.code ?? error.message}).`;
}

function close(server: Server): Promise<void> {
  return new Promise((done) => {
    server.close(() => done());
    server.closeAllConnections();
  });
}
