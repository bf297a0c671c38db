import { homedir } from 'node:os';
import { join } from 'node:path';

type Environment = Readonly<Record<string, string | undefined>>;

/** The path of a user's own book, by the conventions of the operating system. */
export function ownBookPath(
  platform: string = process.platform,
  environment: Environment = process.env,
  home: string = homedir(),
): string {
  return join(dataFolder(platform, environment, home), 'Loamwright', 'Workshop.loamwright');
}

function dataFolder(platform: string, environment: Environment, home: string): string {
  if (platform === 'win32') return environment['APPDATA'] ?? join(home, 'AppData', 'Roaming');
  if (platform === 'darwin') return join(home, 'Library', 'Application Support');
  return environment['XDG_DATA_HOME'] || join(home, '.local', 'share');
}
