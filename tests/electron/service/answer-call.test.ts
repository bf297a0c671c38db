import { describe, expect, test } from 'vitest';

import { answerCall } from '#electron/service/answer-call.ts';
import type { Handlers } from '#electron/service/handlers.ts';
import { channelNames } from '#shared-calc/contract/channel-names.ts';

/** Handlers that all throw, as after a bug. */
const broken = Object.fromEntries(
  channelNames.map((name) => [
    name,
    () => {
      throw new Error('a mistake in the program');
    },
  ]),
) as unknown as Handlers;

describe('answerCall', () => {
  test('a mistake of ours is told with a number, and its stack goes to the log alone', () => {
    const log: string[] = [];
    const answer = answerCall(broken, 'book.info', {}, (text) => log.push(text));

    expect(answer).toEqual({
      ok: false,
      fault: {
        says: expect.stringMatching(
          /^The program failed \(fault F-[0-9A-Z]{6}\)\. The book is whole; the log says more\.$/,
        ) as unknown,
        readAgain: true,
      },
    });
    const [fault] = /F-\w{6}/.exec(JSON.stringify(answer)) ?? [];
    expect(log).toEqual([
      expect.stringContaining(`fault ${fault} in book.info: Error: a mistake in the program\n    at`),
    ]);
  });

  test('what is too long for a box is refused with the name of the field', () => {
    const record = { id: 'V1', job: 'J01', line: 'soil_rise', text: '1'.repeat(10_001), note: '', by: 'us' };
    const change = { label: 'soil rise', added: [{ kind: 'localValue', record }], updated: [], removed: [] };
    const answer = answerCall(broken, 'book.apply', { opening: 'x', onRevision: 1, change }, () => undefined);

    expect(answer).toEqual({
      ok: false,
      fault: {
        says: 'The text of the local value V1 has 10,001 letters; 10,000 is the most. Shorten it; nothing was written.',
        readAgain: false,
      },
    });
  });
});
