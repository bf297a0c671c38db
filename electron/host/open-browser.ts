import { spawn } from 'node:child_process';

type Environment = Readonly<Record<string, string | undefined>>;

interface Opener {
  readonly program: string;
  readonly args: readonly string[];
}

/** Whether a window can be shown where the program runs. */
export function hasScreen(platform: string, environment: Environment): boolean {
  if (platform === 'win32' || platform === 'darwin') return environment['SSH_CONNECTION'] === undefined;
  return Boolean(environment['DISPLAY']) || Boolean(environment['WAYLAND_DISPLAY']);
}

/** How a machine opens a link in its owner's browser. */
export function openerOf(platform: string, link: string): Opener {
  if (platform === 'win32') return { program: 'cmd', args: ['/d', '/s', '/c', `start "" "${link}"`] };
  return { program: platform === 'darwin' ? 'open' : 'xdg-open', args: [link] };
}

/** Opens a link; where that fails, the link has been written out all the same. */
export function openBrowser(link: string): void {
  const { program, args } = openerOf(process.platform, link);
  const child = spawn(program, args, { detached: true, stdio: 'ignore', windowsVerbatimArguments: true });
  child.on('error', () => undefined);
  child.unref();
}
