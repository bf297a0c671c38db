import { describe, expect, test } from 'vitest';

import { openBridge } from '#renderer/bridge.ts';
import { channelNames } from '#shared-calc/contract/channel-names.ts';
import type { DesktopDoor } from '#shared-calc/contract/desktop-door.ts';

const nothing = () => Promise.resolve();

/** The desktop's bridge with a service that answers the first call late. */
function doorAtHand(answer: (channel: string, input: unknown) => Promise<unknown>) {
  const listeners = new Set<(news: unknown) => void>();
  const call = Object.fromEntries(channelNames.map((name) => [name, (input: unknown) => answer(name, input)]));
  const door: DesktopDoor = {
    call: call as unknown as DesktopDoor['call'],
    files: { open: nothing, make: nothing, saveCopy: nothing, openDropped: nothing },
    onNews: (listener) => {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
  };
  return {
    bridge: openBridge({ loamwright: door } as unknown as Window),
    tell: (news: unknown) => listeners.forEach((hear) => hear(news)),
  };
}

describe('openBridge on the desktop', () => {
  test('calls go one after the other, in the order in which they were made', async () => {
    const begun: string[] = [];
    const free: (() => void)[] = [];
    const { bridge } = doorAtHand((channel) => {
      begun.push(channel);
      return new Promise((done) => free.push(() => done({ ok: true, value: { books: [] } })));
    });
    const both = [bridge.call('file.recent', {}), bridge.call('file.recent', {})];
    await Promise.resolve();
    expect(begun.length).toBe(1);
    free[0]?.();
    expect(await both[0]).toEqual({ ok: true, value: { books: [] } });
    free[1]?.();

    expect(await both[1]).toEqual({ ok: true, value: { books: [] } });
    expect(begun.length).toBe(2);
  });

  test('no call waits for the confirming of a job of many sizes', async () => {
    const { bridge } = doorAtHand((channel) =>
      channel === 'bench.confirm' ? new Promise(() => undefined) : Promise.resolve({ ok: true, value: { books: [] } }),
    );
    void bridge.call('bench.confirm', { job: 'J01' });

    expect(await bridge.call('file.recent', {})).toEqual({ ok: true, value: { books: [] } });
  });

  test('a service that does not answer is a refusal, and the next call is made all the same', async () => {
    let called = 0;
    const { bridge } = doorAtHand(() => {
      called += 1;
      return called === 1 ? Promise.reject(new Error('gone')) : Promise.resolve({ ok: true, value: { books: [] } });
    });

    expect(await bridge.call('file.recent', {})).toEqual({
      ok: false,
      fault: { says: 'Loamwright does not answer. Not kept, unless it shows when it is back.', readAgain: true },
    });
    expect(await bridge.call('file.recent', {})).toEqual({ ok: true, value: { books: [] } });
  });

  test('news are heard until one stops listening, and what is no news is let pass', () => {
    const { bridge, tell } = doorAtHand(() => Promise.resolve());
    const heard: unknown[] = [];
    const stop = bridge.onChanged((news) => heard.push(news));
    tell({ is: 'written', opening: 'x', revision: 7 });
    tell({ is: 'something else' });
    stop();
    tell({ is: 'written', opening: 'x', revision: 8 });

    expect(heard).toEqual([{ is: 'written', opening: 'x', revision: 7 }]);
  });
});
