import { describe, expect, test } from 'vitest';

import { isOwnDownload, refuseDownloads } from '#electron/main/own-downloads.ts';

const own = 'blob:app://page/3f2a9c1e';

describe('isOwnDownload', () => {
  test.each([
    [own, 'J01 bench.csv', true],
    [own, 'Care of J01.ics', true],
    [own, 'bench.CSV', true],
    [own, 'bench.csv.exe', false],
    [own, '../bench.csv', false],
    [own, '..\\bench.csv', false],
    [own, '.csv', false],
    [own, '', false],
    ['app://page/assets/index.js', 'index.csv', false],
    ['blob:app://evil/3f2a9c1e', 'bench.csv', false],
    ['blob:https://evil.example/3f2a9c1e', 'bench.csv', false],
    ['blob:blob:app://page/3f2a9c1e', 'bench.csv', false],
    ['https://evil.example/bench.csv', 'bench.csv', false],
    ['data:text/csv,a', 'bench.csv', false],
    ['file:///etc/passwd', 'bench.csv', false],
  ])('%s as %s: %s', (address, fileName, is) => {
    expect(isOwnDownload(address, fileName)).toBe(is);
  });
});

describe('refuseDownloads', () => {
  test('a list of the page is kept, anything else is refused', () => {
    type Handler = (event: { preventDefault: () => void }, item: object) => void;
    const handlers = new Map<string, Handler>();
    refuseDownloads({ on: (name: string, handler: Handler) => handlers.set(name, handler) } as never);
    const isRefused = (url: string) => {
      let refused = false;
      const item = { getURL: () => url, getFilename: () => 'J01 bench.csv' };
      handlers.get('will-download')?.({ preventDefault: () => (refused = true) }, item);
      return refused;
    };
    expect([isRefused(own), isRefused('https://evil.example/J01 bench.csv')]).toEqual([false, true]);
  });
});
