import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

import { openService } from '#electron/service/open-service.ts';
import { channelNames } from '#shared-calc/contract/channel-names.ts';

import { ask, recordsOf, refused, serviceAtHand, temporaryFolder, today } from './service-at-hand.ts';

describe('openService', () => {
  test('the first start makes a book of the demo workshop', () => {
    const at = serviceAtHand(join(temporaryFolder(), 'Workshop.loamwright'));
    const { info, records } = ask(at, 'book.read', {});

    expect(existsSync(at.path)).toBe(true);
    expect(records.tank.length).toBeGreaterThan(5);
    expect({ ...info, opening: '', savedAt: '' }).toEqual({
      opening: '',
      savedAt: '',
      name: 'Workshop.loamwright',
      path: at.path,
      revision: 1,
      notices: [],
      today,
    });
    expect(Date.parse(info.savedAt)).not.toBeNaN();
  });

  test('a book that is there is opened as it is', () => {
    const first = serviceAtHand();
    const before = recordsOf(first);
    first.service.close();

    expect(recordsOf(serviceAtHand(first.path))).toEqual(before);
  });

  test('a file that is no book is refused in words and left as it is', () => {
    const path = join(temporaryFolder(), 'letter.loamwright');
    writeFileSync(path, 'Dear Ottoline, '.repeat(100));
    const options = { today: () => today, onNews: () => undefined, log: () => undefined, recentFile: `${path}.recent` };

    expect(openService({ ...options, path })).toEqual({ ok: false, fault: `${path} is not a book.` });
    expect(readFileSync(path, 'utf8')).toBe('Dear Ottoline, '.repeat(100));
  });

  test('every channel refuses what is not asked for as agreed', () => {
    const at = serviceAtHand();
    for (const channel of channelNames) {
      for (const input of [undefined, null, 7, 'text', [], { surplus: 1 }]) {
        expect(refused(at, channel, input)).toEqual({
          says: expect.stringMatching(/^This cannot be taken as it stands: .+\.$/) as unknown,
          readAgain: false,
        });
      }
    }
    expect(ask(at, 'book.info', {}).revision).toBe(1);
    expect(at.log).toEqual([]);
  });
});
