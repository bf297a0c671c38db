import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

import { openFaultLog } from '#electron/host/fault-log.ts';
import { temporaryFolder } from './host-at-hand.ts';

describe('openFaultLog', () => {
  test('each fault stands with its time', () => {
    const file = join(temporaryFolder(), 'kept here', 'faults.log');
    const log = openFaultLog(file, () => '2027-03-10T09:00:00.000Z');
    log('fault F-1');
    log('fault F-2');

    expect(readFileSync(file, 'utf8')).toBe('2027-03-10T09:00:00.000Z fault F-1\n2027-03-10T09:00:00.000Z fault F-2\n');
  });

  test('a log that has grown large begins anew', () => {
    const file = join(temporaryFolder(), 'faults.log');
    writeFileSync(file, 'x'.repeat(1_000_001));
    openFaultLog(file, () => 'now')('fault F-3');

    expect(readFileSync(file, 'utf8')).toBe('now fault F-3\n');
  });

  test('where it cannot be written, nothing falls', () => {
    const folder = temporaryFolder();

    expect(() => openFaultLog(folder, () => 'now')('fault F-4')).not.toThrow();
  });
});
