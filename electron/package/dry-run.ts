import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { projectFolder } from '#electron/host/is-stale.ts';
import { fusesOn, readArchive, writeStandInShell, type ArchivedFile, type System } from './stand-in-shell.ts';

/** What a packed program may weigh beside the shell itself, bytes. */
export const BUDGET = 12_000_000;

export interface Packed {
  readonly system: System;
  readonly arch: string;
  readonly files: readonly ArchivedFile[];
  /** Archive and unpacked driver, bytes. */
  readonly bytes: number;
  readonly fuses: readonly string[];
}

/** What the packer would hand to the maker of a Debian package: its arguments, and the files it wrote for it. */
export interface DebParts {
  readonly args: readonly string[];
  readonly desktop: string;
  readonly mime: string;
}

export interface DryRun {
  readonly packed: readonly Packed[];
  readonly deb: DebParts;
}

const targets = [
  ['linux', 'x64'],
  ['linux', 'arm64'],
  ['win', 'x64'],
  ['mac', 'x64'],
  ['mac', 'arm64'],
] as const;

/**
 * Packs the built program for every target with the packer itself, which refuses a configuration that is not of its
 * schema, but around a stand-in for Electron's binary, which is not on every machine.
 */
export function dryRun(version: string): DryRun {
  const folder = mkdtempSync(join(tmpdir(), 'loamwright-pack-'));
  try {
    const packed = targets.map(([system, arch]) => packOne(folder, { system, arch, version }));
    return { packed, deb: debParts(folder) };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

interface Target {
  readonly system: System;
  readonly arch: string;
  readonly version: string;
}

function packOne(folder: string, { system, arch, version }: Target): Packed {
  const shell = join(folder, `shell-${system}`);
  if (!existsSync(shell)) writeStandInShell(shell, system, version);
  const out = join(folder, `${system}-${arch}`);
  runPacker([
    '--dir',
    `--${system}`,
    `--${arch}`,
    `-c.electronDist=${shell}`,
    `-c.directories.output=${out}`,
    // These are written into a real program of Windows alone, or with a certificate.
    ...(system === 'win' ? ['-c.win.signAndEditExecutable=false', '-c.disableAsarIntegrity=true'] : []),
    ...(system === 'mac' ? ['-c.mac.identity=null'] : []),
  ]);
  const app = join(out, readdirSync(out).find((name) => !name.endsWith('.yml')) ?? '');
  const inside = system === 'mac' ? join(app, 'Loamwright.app/Contents') : app;
  const resources = join(inside, system === 'mac' ? 'Resources' : 'resources');
  const archive = readFileSync(join(resources, 'app.asar'));
  const files = readArchive(archive);
  const outside = files.filter(({ unpacked }) => unpacked).reduce((sum, { size }) => sum + size, 0);
  const binary = {
    linux: 'loamwright',
    win: 'loamwright.exe',
    mac: 'Frameworks/Electron Framework.framework/Electron Framework',
  };
  const fuses = fusesOn(readFileSync(join(inside, binary[system]), 'latin1'));
  return { system, arch, files, bytes: archive.length + outside, fuses };
}

/** The packer calls a maker of packages; here it is a script that keeps what it is given. */
function debParts(folder: string): DebParts {
  const maker = join(folder, 'maker');
  const kept = join(folder, 'kept');
  mkdirSync(kept);
  writeFileSync(
    maker,
    `#!/bin/sh
for part in "$@"; do
  printf '%s\\0' "$part" >> '${kept}/args'
  case "$part" in *.desktop=*) cp "\${part%%=*}" '${kept}/desktop';; *.xml=*) cp "\${part%%=*}" '${kept}/mime';; esac
  [ "$before" = --package ] && : > "$part"
  before="$part"
done
exit 0
`,
    { mode: 0o755 },
  );
  const app = join(folder, 'linux-x64/linux-unpacked');
  runPacker(['--linux', 'deb', '--x64', '--prepackaged', app, `-c.directories.output=${join(folder, 'deb')}`], {
    CUSTOM_FPM_PATH: maker,
  });
  const read = (name: string) => readFileSync(join(kept, name), 'utf8');
  return { args: read('args').split('\0').slice(0, -1), desktop: read('desktop'), mime: read('mime') };
}

/** The packer's own command. */
export function packerFile(): string {
  return createRequire(import.meta.url).resolve('electron-builder/cli.js');
}

function runPacker(args: readonly string[], environment: Readonly<Record<string, string>> = {}): void {
  const run = spawnSync(process.execPath, [packerFile(), '--config', 'electron-builder.yml', ...args], {
    cwd: projectFolder,
    env: { ...process.env, ...environment, CSC_IDENTITY_AUTO_DISCOVERY: 'false' },
    encoding: 'utf8',
  });
  if (run.status !== 0) throw new Error(`The packer refused ${args.join(' ')}:\n${run.stdout}${run.stderr}`);
}

/** What is wrong with a packed program; empty if nothing is. */
export function packingFaults({ packed, deb }: DryRun): readonly string[] {
  return [...packed.flatMap(archiveFaults), ...debFaults(deb)];
}

/** Which file of machine code a system loads. */
const drivers: Readonly<Record<System, string>> = { linux: 'linux', win: 'win32', mac: 'darwin' };
const wantedFuses = ['enableCookieEncryption', 'enableEmbeddedAsarIntegrityValidation', 'onlyLoadAppFromAsar'];
const needed = [
  'package.json',
  'LICENSE',
  'electron/dist/main.js',
  'electron/dist/preload.cjs',
  'electron/dist/command-line.cjs',
  'renderer/dist/index.html',
  'node_modules/better-sqlite3/lib/index.js',
];
const allowed =
  /^(?:package\.json|LICENSE|(?:electron\/dist|renderer\/dist|fixtures\/demo|node_modules\/better-sqlite3)\/.+)$/;

function archiveFaults({ system, arch, files, bytes, fuses }: Packed): readonly string[] {
  const names = files.map(({ name }) => name);
  const driver = `node_modules/better-sqlite3/prebuilds/${drivers[system]}-${arch}.node`;
  const code = names.filter((name) => name.endsWith('.node'));
  const others = fuses.filter((fuse) => fuse !== 'wasmTrapHandlers');
  return [
    ...needed.filter((name) => !names.includes(name)).map((name) => `${name} is not in it`),
    ...names.filter((name) => !allowed.test(name)).map((name) => `${name} is not needed in it`),
    ...(code.join() === driver ? [] : [`its machine code is ${code.join(', ') || 'missing'}, not ${driver}`]),
    ...(others.join() === wantedFuses.join() ? [] : [`its fuses that are on: ${fuses.join(', ')}`]),
    ...(bytes <= BUDGET ? [] : [`it weighs ${megabytes(bytes)} beside the shell, more than ${megabytes(BUDGET)}`]),
  ].map((fault) => `${system} ${arch}: ${fault}`);
}

function debFaults({ args, desktop, mime }: DebParts): readonly string[] {
  const given = (name: string) => args[args.indexOf(name) + 1] ?? '';
  const icons = args.filter((part) => part.includes('/usr/share/icons/hicolor/'));
  const checks: readonly (readonly [fault: string, ok: boolean])[] = [
    ['it has no homepage', args.includes('--url') && given('--url').startsWith('https://')],
    ['it has no maintainer with an address', / <.+@.+>$/.test(given('--maintainer'))],
    ['it has no description', given('--description').length > 40],
    ['it has no licence', given('--license') === 'GPL-3.0-only'],
    ['it has no category', given('--category') !== ''],
    ['it lacks icons', icons.length >= 8],
    ['its books have no type', mime.includes('type="application/x-loamwright-book"') && mime.includes('*.loamwright')],
    ['it does not open its books', desktop.includes('MimeType=application/x-loamwright-book;')],
    ['it has no name in menus', /^Name=Loamwright$/m.test(desktop) && /^Categories=Office;$/m.test(desktop)],
  ];
  return checks.filter(([, ok]) => !ok).map(([fault]) => `deb: ${fault}`);
}

export function megabytes(bytes: number): string {
  return `${(bytes / 1_000_000).toFixed(1)} MB`;
}
