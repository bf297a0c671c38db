import { spawn } from 'node:child_process';

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

/** The command that opens a link in the user's browser. */
export function openerOf(platform: string, link: string): Opener {
  if (platform === 'win32') return { program: 'cmd', args: ['/d', '/s', '/c', `start "" "${link}"`] };
  return { program: platform === 'darwin' ? 'open' : 'xdg-open', args: [link] };
}

/** Opens a link. Failing is harmless: the link is printed as well. */
export function openBrowser(link: string): void {
  const { program, args } = openerOf(process.platform, link);
  const child = spawn(program, args, { detached: true, stdio: 'ignore', windowsVerbatimArguments: true });
  child.on('error', () => undefined);
  child.unref();
}
