import { describe, expect, test } from 'vitest';

import { answerPageCalls } from '#electron/main/answer-page-calls.ts';
import { channelNames } from '#shared-calc/contract/channel-names.ts';
import { ok } from '#shared-calc/result.ts';

type Handler = (event: never, input: unknown) => unknown;

function callsAtHand() {
  const handlers = new Map<string, Handler>();
  const called: unknown[] = [];
  answerPageCalls(
    { handle: (channel, handler) => void handlers.set(channel, handler as Handler) },
    (channel, input) => {
      called.push([channel, input]);
      return Promise.resolve(ok('done'));
    },
  );
  const send = (channel: string, senderFrame: unknown, input: unknown) =>
    handlers.get(channel)?.({ senderFrame } as never, input);
  return { handlers, called, send };
}

const page = { url: 'app://page/', parent: null };

describe('answerPageCalls', () => {
  test('there is one way in for each channel, and no other', () => {
    expect([...callsAtHand().handlers.keys()]).toEqual([...channelNames]);
  });

  test('the page is answered', async () => {
    const { send, called } = callsAtHand();

    expect(await send('book.info', page, { a: 1 })).toEqual({ ok: true, value: 'done' });
    expect(called).toEqual([['book.info', { a: 1 }]]);
  });

  test.each([
    ['a frame within the page', { url: 'app://page/', parent: page }],
    ['another page', { url: 'https://evil.example/', parent: null }],
    ['a file', { url: 'file:///tmp/page.html', parent: null }],
    ['a frame that is gone', null],
  ])('%s is not, on any channel', (_, frame) => {
    const { send, called } = callsAtHand();
    for (const channel of channelNames) {
      expect(send(channel, frame, {})).toEqual({
        ok: false,
        fault: { says: 'Only the page may call here.', readAgain: false },
      });
    }
    expect(called).toEqual([]);
  });
});
