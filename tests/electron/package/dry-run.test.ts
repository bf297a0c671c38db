import { describe, expect, test } from 'vitest';
import { BUDGET, packingFaults, type DryRun } from '#electron/package/dry-run.ts';

const needed = ['package.json', 'LICENSE', 'electron/dist/main.js', 'electron/dist/preload.cjs'];
const files = [
  ...needed,
  'electron/dist/command-line.cjs',
  'renderer/dist/index.html',
  'node_modules/better-sqlite3/lib/index.js',
  'node_modules/better-sqlite3/prebuilds/linux-x64.node',
].map((name) => ({ name, size: 1, unpacked: name.endsWith('.node') }));
const right: DryRun = {
  packed: [
    {
      system: 'linux',
      arch: 'x64',
      files,
      bytes: BUDGET,
      fuses: ['enableCookieEncryption', 'enableEmbeddedAsarIntegrityValidation', 'onlyLoadAppFromAsar'],
    },
  ],
  deb: {
    args: [
      '--url',
      'https://here.example',
      '--maintainer',
      'We <we@here.example>',
      '--license',
      'GPL-3.0-only',
      '--description',
      'A calculator for builders of planted enclosures',
      '--category',
      'misc',
      ...Array.from({ length: 8 }, (_, at) => `${at}.png=/usr/share/icons/hicolor/${at}/apps/loamwright.png`),
    ],
    desktop: 'Name=Loamwright\nMimeType=application/x-loamwright-book;\nCategories=Office;\n',
    mime: '<mime-type type="application/x-loamwright-book"><glob pattern="*.loamwright"/>',
  },
};

describe('packingFaults', () => {
  test('none in a right package', () => {
    expect(packingFaults(right)).toEqual([]);
  });

  test('the driver of another system, a package that is bundled, a fuse and the weight are told', () => {
    const [packed] = right.packed;
    const wrong = {
      ...right,
      packed: packed
        ? [
            {
              ...packed,
              arch: 'arm64',
              files: [...files, { name: 'node_modules/zod/index.js', size: 1, unpacked: false }],
              fuses: ['runAsNode', ...packed.fuses],
              bytes: BUDGET + 1,
            },
          ]
        : [],
      deb: { ...right.deb, args: right.deb.args.slice(2) },
    };
    expect(packingFaults(wrong)).toEqual([
      'linux arm64: node_modules/zod/index.js is not needed in it',
      expect.stringContaining('linux-x64.node, not '),
      expect.stringContaining('its fuses that are on: runAsNode'),
      expect.stringContaining('it weighs 12.0 MB'),
      'deb: it has no homepage',
    ]);
  });
});
