import { homedir } from 'node:os';
import { join } from 'node:path';

type Environment = Readonly<Record<string, string | undefined>>;

/** Where a user's own book lies, by the custom of the machine. */
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
