import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { entryForm } from './entry-page.ts';
import type { ServedBook } from './serve-book.ts';

type Environment = Readonly<Record<string, string | undefined>>;

interface Opener {
  readonly program: string;
  readonly args: readonly string[];
}

/** Whether the machine has a screen. */
export function hasScreen(platform: string, environment: Environment): boolean {
  if (platform === 'win32' || platform === 'darwin') return environment['SSH_CONNECTION'] === undefined;
  return Boolean(environment['DISPLAY']) || Boolean(environment['WAYLAND_DISPLAY']);
}

/** The command that opens a file in the user's browser. */
export function openerOf(platform: string, file: string): Opener {
  const programs: Readonly<Record<string, string>> = { win32: 'explorer', darwin: 'open' };
  return { program: programs[platform] ?? 'xdg-open', args: [file] };
}

/**
 * Opens the page in the user's browser, by a file that only the user can read: the command line of a process is open to
 * every user of the machine. Failing is harmless: a link is printed as well.
 */
export function openBrowser(served: Pick<ServedBook, 'address' | 'newKey'>, environment: Environment): void {
  const { program, args } = openerOf(process.platform, writeEntryFile(served, environment['XDG_RUNTIME_DIR']));
  const child = spawn(program, args, { detached: true, stdio: 'ignore' });
  child.on('error', () => undefined);
  child.unref();
}

/** Writes that file, in a folder of its own; both are removed once the key is used or too old. */
function writeEntryFile({ address, newKey }: Pick<ServedBook, 'address' | 'newKey'>, runtimeFolder = tmpdir()): string {
  // Made with mode 0700.
  const folder = mkdtempSync(join(runtimeFolder, 'loamwright-'));
  const key = newKey(() => rmSync(folder, { recursive: true, force: true }));
  const file = join(folder, 'open.html');
  writeFileSync(file, entryForm(address, key), { mode: 0o600, flag: 'wx' });
  return file;
}
