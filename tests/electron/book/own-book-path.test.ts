import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { ownBookPath } from '#electron/book/own-book-path.ts';

const name = join('Loamwright', 'Workshop.loamwright');

describe('ownBookPath', () => {
  test.each([
    { platform: 'linux', environment: {}, folder: join('/me', '.local', 'share') },
    { platform: 'linux', environment: { XDG_DATA_HOME: '/data' }, folder: '/data' },
    { platform: 'linux', environment: { XDG_DATA_HOME: '' }, folder: join('/me', '.local', 'share') },
    { platform: 'darwin', environment: {}, folder: join('/me', 'Library', 'Application Support') },
    { platform: 'win32', environment: { APPDATA: '/roaming' }, folder: '/roaming' },
    { platform: 'win32', environment: {}, folder: join('/me', 'AppData', 'Roaming') },
  ])('on $platform with $environment the book is kept in $folder', ({ platform, environment, folder }) => {
    expect(ownBookPath(platform, environment, '/me')).toBe(join(folder, name));
  });
});
