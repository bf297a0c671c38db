import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

import { findDesktopProgram } from '#electron/host/desktop-program.ts';

import { temporaryFolder } from './host-at-hand.ts';

function shellPackage(): string {
  const folder = temporaryFolder();
  mkdirSync(join(folder, 'dist'));
  writeFileSync(join(folder, 'package.json'), '{"version":"45.4.1"}');
  writeFileSync(join(folder, 'path.txt'), 'shell');
  writeFileSync(join(folder, 'dist/version'), 'v45.4.1\n');
  writeFileSync(join(folder, 'dist/shell'), '');
  return folder;
}

describe('findDesktopProgram', () => {
  test('a program of the right version that is there is found', () => {
    const folder = shellPackage();

    expect(findDesktopProgram(folder, {})).toBe(join(folder, 'dist/shell'));
  });

  test.each(['path.txt', 'dist/version', 'dist/shell'])('without %s it is not there', (file) => {
    const folder = shellPackage();
    rmSync(join(folder, file));

    expect(findDesktopProgram(folder, {})).toBeUndefined();
  });

  test('one of another version is not taken', () => {
    const folder = shellPackage();
    writeFileSync(join(folder, 'dist/version'), '44.0.0');

    expect(findDesktopProgram(folder, {})).toBeUndefined();
  });

  test('one that the person keeps elsewhere is taken from there', () => {
    const [folder, elsewhere] = [shellPackage(), temporaryFolder()];
    writeFileSync(join(elsewhere, 'shell'), '');

    expect(findDesktopProgram(folder, { ELECTRON_OVERRIDE_DIST_PATH: elsewhere })).toBe(join(elsewhere, 'shell'));
    expect(findDesktopProgram(folder, { ELECTRON_OVERRIDE_DIST_PATH: temporaryFolder() })).toBeUndefined();
  });
});
