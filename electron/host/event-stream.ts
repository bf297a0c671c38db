import type { ServerResponse } from 'node:http';

import type { News } from '#shared-calc/contract/news.ts';

import { guardHeaders } from './content-policy.ts';

/** Interval of a comment on the stream, so that a page notices soon when the service is gone. */
const beatEveryMs = 5_000;
/** More pages than anybody has open at once. */
const mostListeners = 100;

/** The listening pages, each over a response that stays open. */
export interface EventStream {
  /** Adds a page and sends it the state of the book first; false if too many pages listen. */
  readonly add: (response: ServerResponse, first: News) => boolean;
  readonly tell: (news: News) => void;
  readonly close: () => void;
}

export function openEventStream(): EventStream {
  const listeners = new Set<ServerResponse>();
  const send = (text: string) => {
    for (const listener of listeners) listener.write(text);
  };
  const beat = setInterval(() => send(':\n\n'), beatEveryMs).unref();
  return {
    add: (response, first) => {
      if (listeners.size >= mostListeners) return false;
      response.writeHead(200, { ...guardHeaders, 'content-type': 'text/event-stream', 'cache-control': 'no-store' });
      response.write(lineOf(first));
      listeners.add(response);
      response.on('close', () => listeners.delete(response));
      return true;
    },
    tell: (news) => send(lineOf(news)),
    close: () => {
      clearInterval(beat);
      for (const listener of listeners) listener.end();
    },
  };
}

function lineOf(news: News): string {
  return `data: ${JSON.stringify(news)}\n\n`;
}
