import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { commandLineBundle } from '#electron/cli/bundle.ts';
import { buildIfStale, pageBundle } from '#electron/host/build-stale.ts';
import { projectFolder } from '#electron/host/is-stale.ts';
import { BUDGET, dryRun, megabytes, packerFile, packingFaults } from './package/dry-run.ts';
import { iconFiles } from './package/icon-files.ts';
import { desktopBundles } from './desktop-bundles.ts';

/** What `--dry` cannot show: it has no shell to start and none of the makers that the packer fetches. */
const unproven = [
  'that the packed program starts: Electron’s own binary is not here',
  'AppImage, nsis and dmg as files: their makers are fetched by the packer; the deb is not compressed either',
  'the path of a Windows user (path.nsh), and the program’s resources there (name, icon, version)',
  'the command line in a terminal of Windows and macOS, and without a display on Linux',
  'signing and notarising: they need the maintainers’ certificates',
  'the homepage: loamwright.example stands for an address that is still to be had',
];

/** `npm run package`: packs the desktop program; with `--dry` around a stand-in for its shell, and says what it holds. */
const asked = process.argv.slice(2);
process.exitCode = buildAll() ? pack() : 1;

function buildAll(): boolean {
  const built = [pageBundle, ...desktopBundles, commandLineBundle].map((bundle) => buildIfStale(bundle, say));
  for (const each of built) if (!each.ok) process.stderr.write(`${each.fault}\n`);
  const icons = join(projectFolder, 'out/icons');
  mkdirSync(icons, { recursive: true });
  const mark = readFileSync(join(projectFolder, 'renderer/look/mark.svg'), 'utf8');
  for (const [name, bytes] of iconFiles(mark)) writeFileSync(join(icons, name), bytes);
  return built.every(({ ok }) => ok);
}

function pack(): number {
  if (!asked.includes('--dry')) {
    const args = [packerFile(), '--config', 'electron-builder.yml', ...asked];
    return spawnSync(process.execPath, args, { cwd: projectFolder, stdio: 'inherit' }).status ?? 1;
  }
  const run = dryRun(electronVersion());
  for (const { system, arch, bytes, files } of run.packed)
    say(`${system} ${arch}: ${megabytes(bytes)} of ${megabytes(BUDGET)} beside the shell, ${files.length} files`);
  const faults = packingFaults(run);
  for (const fault of faults) process.stderr.write(`${fault}\n`);
  if (faults.length === 0) say('Configuration, metadata, icons, file type, fuses and archives are right.');
  say(['Not proven here:', ...unproven.map((each) => `- ${each}`)].join('\n'));
  return faults.length === 0 ? 0 : 1;
}

function electronVersion(): string {
  const file = join(projectFolder, 'node_modules/electron/package.json');
  return z.looseObject({ version: z.string() }).parse(JSON.parse(readFileSync(file, 'utf8'))).version;
}

function say(line: string): void {
  process.stdout.write(`${line}\n`);
}
