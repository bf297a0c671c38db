import { spawn } from 'node:child_process';
import { join } from 'node:path';

import { startCommand } from '#electron/cli/commands/start.ts';
import { exitCodes } from '#electron/cli/outcome.ts';
import { refuseMissing } from '#electron/cli/with-book.ts';
import { readArguments, type Arguments } from '#electron/cli/read-arguments.ts';
import { buildIfStale, pageBundle } from '#electron/host/build-stale.ts';
import { projectFolder } from '#electron/host/is-stale.ts';
import { findDesktopProgram } from '#electron/host/desktop-program.ts';
import { hasScreen } from '#electron/host/open-browser.ts';
import { desktopBundles } from './desktop-bundles.ts';

/** `npm start`: the desktop window if Electron is available, otherwise the same page on a loopback address. */
const given = readArguments(process.argv.slice(2), startCommand.options);
if (given.ok) process.exitCode = await start(given.value);
else {
  process.stderr.write(`${given.fault}\n`);
  process.exitCode = exitCodes['wrong use'];
}

async function start(asked: Arguments): Promise<number> {
  if (refuseMissing(asked)) return servePage(asked);
  const program = findDesktopProgram(join(projectFolder, 'node_modules/electron'), process.env);
  const wantsPage = asked.text('port') !== undefined || asked.flag('no-browser');
  if (program !== undefined && !wantsPage && hasScreen(process.platform, process.env)) {
    const begun = performance.now();
    const code = await openDesktop(program, asked.text('book'));
    // One that has run for a while has been open; how it ended is no reason to begin again.
    if (code === 0 || performance.now() - begun > 10_000) return code;
    process.stderr.write('The desktop window could not be opened, so the page is served for your browser.\n');
  } else if (!wantsPage) process.stdout.write(`${sayWhyPage(program)}\n`);
  return servePage(asked);
}

function sayWhyPage(program: string | undefined): string {
  return program === undefined
    ? "The desktop window's program is not on this machine, so the page is served for your browser."
    : 'There is no screen here for a window, so the page is served for a browser.';
}

async function servePage(asked: Arguments): Promise<number> {
  const outcome = await startCommand.run(asked);
  const says = outcome.is === 'refused' ? outcome.says : 'says' in outcome ? [outcome.says] : [];
  for (const each of says) process.stderr.write(`${each}\n`);
  return exitCodes[outcome.is] ?? 0;
}

/** Runs the desktop's program until its window is closed; answers how it ended. */
function openDesktop(program: string, book: string | undefined): Promise<number> {
  for (const bundle of [pageBundle, ...desktopBundles]) {
    const built = buildIfStale(bundle, (line) => process.stdout.write(`${line}\n`));
    if (!built.ok) {
      process.stderr.write(`${built.fault}\n`);
      return Promise.resolve(1);
    }
  }
  const args = [projectFolder, ...(book === undefined ? [] : ['--book', book])];
  return new Promise((ended) => {
    const child = spawn(program, args, { stdio: 'inherit' });
    child.on('error', () => ended(1));
    child.on('exit', (code) => ended(code ?? 1));
  });
}
