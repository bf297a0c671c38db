import { describe, expect, test } from 'vitest';

import { answerCall, answerMeanwhile } from '#electron/service/answer-call.ts';
import type { Handlers } from '#electron/service/handlers.ts';
import { refuse } from '#electron/service/refuse.ts';
import { channelNames } from '#shared-calc/contract/channel-names.ts';
import { channels } from '#shared-calc/contract/channels.ts';
import { ok } from '#shared-calc/result.ts';

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

  test.each([
    ['a list of a million', { added: Array.from({ length: 1_000_000 }, () => 1) }, 'a list has 1,000,000 entries'],
    ['a text of six million letters', { label: 'x'.repeat(6_000_000) }, 'a text has 6,000,000 letters'],
    ['lists within lists', { added: nested(40) }, 'lists lie deeper than 32 in one another'],
  ])('%s is refused by its size, unread', (_, part, says) => {
    const change = { label: 'x', added: [], updated: [], removed: [], ...part };
    const answer = answerCall(broken, 'book.apply', { opening: 'x', onRevision: 1, change }, () => undefined);

    expect(answer).toMatchObject({ fault: { says: expect.stringContaining(says) as string } });
  });

  test('of a list of wrong records the first alone is told', () => {
    const change = { label: 'x', added: [], updated: Array.from({ length: 50_000 }, () => ({})), removed: [] };
    const input = channels['book.apply'].input.safeParse({ opening: 'x', onRevision: 1, change });

    expect(input.error?.issues.map(({ path }) => path)).toEqual([['change', 'updated', 0, 'kind']]);
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

describe('answerMeanwhile', () => {
  test('answers other calls between two pieces of long work', async () => {
    const said: string[] = [];
    const handlers = {
      ...broken,
      'bench.confirm': function* () {
        for (const piece of ['one', 'two', 'three']) {
          said.push(piece);
          yield undefined;
        }
        return ok({ revision: 1, columns: [] });
      },
      'book.info': () => {
        said.push('info');
        return refuse('Not now.');
      },
    } as unknown as Handlers;
    const long = answerMeanwhile(handlers, 'bench.confirm', { job: 'J01' }, () => undefined);
    await answerMeanwhile(handlers, 'book.info', {}, () => undefined);

    expect(await long).toEqual({ ok: true, value: { revision: 1, columns: [] } });
    expect(said).toEqual(['one', 'info', 'two', 'three']);
  });
});

/** Lists in one another, that many. */
function nested(depth: number): unknown {
  return depth === 0 ? [] : [nested(depth - 1)];
}
