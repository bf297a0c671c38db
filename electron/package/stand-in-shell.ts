import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { z } from 'zod';

/** A system that the program is packed for, as the packer calls it. */
export type System = 'linux' | 'win' | 'mac';

/** The mark in Electron's binary that its fuses follow: a version, how many there are, and one sign for each. */
const fuseMark = 'dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX';
const fuseNames = [
  'runAsNode',
  'enableCookieEncryption',
  'enableNodeOptionsEnvironmentVariable',
  'enableNodeCliInspectArguments',
  'enableEmbeddedAsarIntegrityValidation',
  'onlyLoadAppFromAsar',
  'loadBrowserProcessSpecificV8Snapshot',
  'grantFileProtocolExtraPrivileges',
  'wasmTrapHandlers',
] as const;
type Fuse = (typeof fuseNames)[number];

/** As Electron is delivered. */
const delivered = '100001000';

/** A folder with what the packer needs of Electron, without its program: names, lists, and fuses to set. */
export function writeStandInShell(folder: string, system: System, version: string): void {
  for (const [name, text] of Object.entries(filesOf(system))) {
    const file = join(folder, name);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, text, { mode: 0o755 });
  }
  writeFileSync(join(folder, 'version'), version);
}

const binary = `${fuseMark}\u0001${String.fromCodePoint(fuseNames.length)}${delivered}`;

function filesOf(system: System): Readonly<Record<string, string>> {
  if (system !== 'mac')
    return {
      [system === 'win' ? 'electron.exe' : 'electron']: binary,
      'locales/en-US.pak': '',
      'locales/en-GB.pak': '',
      'locales/de.pak': '',
      LICENSE: '',
    };
  const inside = 'Electron.app/Contents';
  const framework = `${inside}/Frameworks/Electron Framework.framework`;
  const helpers = ['', ' (GPU)', ' (Plugin)', ' (Renderer)'].map((kind) => `Electron Helper${kind}`);
  return {
    ...appFiles(inside, 'Electron'),
    ...Object.fromEntries(
      helpers.flatMap((name) => Object.entries(appFiles(`${inside}/Frameworks/${name}.app/Contents`, name))),
    ),
    [`${inside}/Resources/en.lproj/locale.pak`]: '',
    [`${inside}/Resources/electron.icns`]: '',
    [`${framework}/Electron Framework`]: binary,
    [`${framework}/Resources/en.lproj/locale.pak`]: '',
    [`${framework}/Versions/A/Resources/en.lproj/locale.pak`]: '',
    LICENSE: '',
  };
}

function appFiles(folder: string, name: string): Readonly<Record<string, string>> {
  return {
    [`${folder}/MacOS/${name}`]: '',
    [`${folder}/Info.plist`]: `<?xml version="1.0" encoding="UTF-8"?>
<plist version="1.0"><dict><key>CFBundleExecutable</key><string>${name}</string></dict></plist>`,
  };
}

/** Which fuses of a packed binary are on. */
export function fusesOn(packed: string): readonly Fuse[] {
  const at = packed.indexOf(fuseMark) + fuseMark.length + 2;
  return fuseNames.filter((_, nth) => packed[at + nth] === '1');
}

const Listed = z.looseObject({
  get files() {
    return z.record(z.string(), Listed).optional();
  },
  size: z.number().optional(),
  unpacked: z.boolean().optional(),
});
type Listed = z.infer<typeof Listed>;

export interface ArchivedFile {
  readonly name: string;
  readonly size: number;
  /** Beside the archive and not in it. */
  readonly unpacked: boolean;
}

/** The files of an archive: its head is four lengths of 4 bytes, then a list as JSON. */
export function readArchive(bytes: Buffer): readonly ArchivedFile[] {
  const length = bytes.readUInt32LE(12);
  const walk = (entry: Listed, path: string): readonly ArchivedFile[] =>
    entry.files === undefined
      ? [{ name: path.slice(1), size: entry.size ?? 0, unpacked: entry.unpacked === true }]
      : Object.entries(entry.files).flatMap(([name, each]) => walk(each, `${path}/${name}`));
  return walk(Listed.parse(JSON.parse(bytes.toString('utf8', 16, 16 + length))), '');
}
