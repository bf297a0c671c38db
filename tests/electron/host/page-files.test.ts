import { rmSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

import { findPageFile, readPageFile } from '#electron/host/page-files.ts';

import { pageIn, temporaryFolder } from './host-at-hand.ts';

describe('findPageFile', () => {
  test('the bare address is the page, and its files are found by name', () => {
    const page = pageIn(temporaryFolder());

    expect(findPageFile(page, '/')).toBe(join(page, 'index.html'));
    expect(findPageFile(page, '/assets/look.css')).toBe(join(page, 'assets/look.css'));
    expect(findPageFile(page, '/assets/lo%6Fk.css')).toBe(join(page, 'assets/look.css'));
  });

  test('a link in the folder that leads out of it is not followed', () => {
    const folder = temporaryFolder();
    const page = pageIn(folder);
    symlinkSync(join(folder, 'secret.html'), join(page, 'way-out.html'));

    expect(findPageFile(page, '/way-out.html')).toBeUndefined();
  });

  test('a page that was never built is not there', () => {
    const page = pageIn(temporaryFolder());
    rmSync(page, { recursive: true });

    expect(readPageFile(page, '/').status).toBe(404);
  });
});

describe('readPageFile', () => {
  test('built files are kept by the browser, the page itself is not', () => {
    const page = pageIn(temporaryFolder());

    expect(readPageFile(page, '/assets/index-AB12.js').headers).toMatchObject({
      'content-type': 'text/javascript; charset=utf-8',
      'cache-control': 'private, max-age=31536000, immutable',
      'x-content-type-options': 'nosniff',
    });
    expect(readPageFile(page, '/').headers['cache-control']).toBe('no-store');
  });
});
