import type { ServerResponse } from 'node:http';

import type { News } from '#shared-calc/contract/news.ts';

import { guardHeaders } from './content-policy.ts';

/** A comment goes out this often, so that a page soon sees that nobody is there any more. */
const beatEveryMs = 15_000;
/** More pages than anybody has open at once. */
const mostListeners = 100;

/** The pages that listen, each over a response that stays open. */
export interface EventStream {
  /** Adds a page, and tells it first where the book stands; false where too many listen. */
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
      response.write(`retry: 1000\n${lineOf(first)}`);
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
