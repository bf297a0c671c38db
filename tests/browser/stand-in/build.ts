import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import config from '#renderer/vite.config.ts';

/** Builds the page over fixed figures and returns its folder. */
export async function buildStandIn(): Promise<string> {
  const root = fileURLToPath(new URL('.', import.meta.url));
  const outDir = fileURLToPath(new URL('../screens/stand-in', import.meta.url));
  await build({ ...config, configFile: false, root, logLevel: 'warn', build: { ...config.build, outDir } });
  return outDir;
}
