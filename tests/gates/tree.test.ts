import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { z } from 'zod';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folders = ['.ci', 'electron', 'fixtures', 'renderer', 'shared-calc', 'tests'];
const topLevel = [
  'CHANGELOG.md',
  'DEVELOPERS.md',
  'LICENSE',
  'README.md',
  'electron',
  'electron-builder.yml',
  'fixtures',
  'package-lock.json',
  'package.json',
  'renderer',
  'shared-calc',
  'tests',
  'tsconfig.json',
];
const made = new Set(['node_modules', 'dist', 'out', 'coverage']);

test('the top level holds what DEVELOPERS.md says, and dot-files', () => {
  const entries = readdirSync(root).filter((name) => !name.startsWith('.') && !made.has(name));

  expect(entries.filter((name) => !topLevel.includes(name))).toEqual([]);
});

test('no file is named for being left over, and none gathers a folder', () => {
  const vague = /(^|[/-])(utils?|helpers?|common|misc|index)(\.|\/|$)/;

  expect(files().filter((file) => /\.tsx?$/.test(file) && vague.test(file))).toEqual([]);
});

test('a test lies in the folder that mirrors its source', () => {
  const astray = files()
    .map((file) => /^tests\/((?:shared-calc|electron|renderer)\/.*)\/[^/]+\.test\.tsx?$/.exec(file)?.[1])
    .filter((folder) => folder !== undefined && !existsSync(path.join(root, folder)));

  expect(astray).toEqual([]);
});

test('no file points at a folder of the machine it was written on', () => {
  const outside = /(?<![\w.])\/(?:work|home|Users|root)\/\w/;

  expect(files().filter((file) => !isBinary(file) && outside.test(read(file)))).toEqual([]);
});

test('every package has its reason in DEVELOPERS.md', () => {
  const Named = z.record(z.string(), z.string());
  const Manifest = z.object({ dependencies: Named, optionalDependencies: Named, devDependencies: Named });
  const manifest = Manifest.parse(JSON.parse(read('package.json')));
  const developers = read('DEVELOPERS.md');
  const packages = Object.keys({
    ...manifest.dependencies,
    ...manifest.optionalDependencies,
    ...manifest.devDependencies,
  });

  expect(packages.filter((name) => !developers.includes(`\`${name}\``))).toEqual([]);
});

function files(): readonly string[] {
  return folders.flatMap((folder) =>
    readdirSync(path.join(root, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => path.relative(root, path.join(entry.parentPath, entry.name)).replaceAll('\\', '/'))
      .filter((file) => !file.includes('/dist/') && !file.startsWith('tests/browser/screens/')),
  );
}

function read(file: string): string {
  return readFileSync(path.join(root, file), 'utf8');
}

function isBinary(file: string): boolean {
  return /\.(png|woff2|sqlite|loamwright)$/.test(file);
}
