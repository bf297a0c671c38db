import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const settings = readFileSync(new URL('../../../electron-builder.yml', import.meta.url), 'utf8');

describe('the packed program', () => {
  test.each([
    'runAsNode: false',
    'enableNodeOptionsEnvironmentVariable: false',
    'enableNodeCliInspectArguments: false',
    'enableEmbeddedAsarIntegrityValidation: true',
    'onlyLoadAppFromAsar: true',
    'grantFileProtocolExtraPrivileges: false',
    'enableCookieEncryption: true',
    'npmRebuild: false',
    'fixtures/demo/**',
  ])('is built with %s', (setting) => {
    expect(settings.split('\n').map((line) => line.replace(/^[\s-]+/, ''))).toContain(setting);
  });
});
