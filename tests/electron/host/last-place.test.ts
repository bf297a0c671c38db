import { statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

import { forgetLastPlace, readLastPlace, writeLastPlace } from '#electron/host/last-place.ts';

import { temporaryFolder } from './host-at-hand.ts';

const place = { port: 41_234, secret: 's'.repeat(43) };

describe('writeLastPlace', () => {
  test.skipIf(process.platform === 'win32')('only the user may read the secret', () => {
    const file = join(temporaryFolder(), 'last-place.json');
    writeFileSync(file, '', { mode: 0o644 });
    writeLastPlace(file, place);

    expect(readLastPlace(file)).toEqual(place);
    expect(statSync(file).mode & 0o777).toBe(0o600);
  });
});

describe('readLastPlace', () => {
  test.each(['', '{}', '{"port":0,"secret":""}', '{"port":80,"secret":"short"}'])('%j is no place', (text) => {
    const file = join(temporaryFolder(), 'last-place.json');
    writeFileSync(file, text);

    expect(readLastPlace(file)).toBeUndefined();
  });
});

describe('forgetLastPlace', () => {
  test('a run takes its own place away and lets another’s be', () => {
    const file = join(temporaryFolder(), 'last-place.json');
    writeLastPlace(file, place);
    forgetLastPlace(file, { ...place, secret: 'other' });
    expect(readLastPlace(file)).toEqual(place);
    forgetLastPlace(file, place);
    expect(readLastPlace(file)).toBeUndefined();
  });
});
