import type { Bundle } from '#electron/host/is-stale.ts';

const sources = ['electron', 'shared-calc', 'package-lock.json'];

/** The desktop's own code, bundled for Electron. */
export const desktopBundles: readonly Bundle[] = [
  { name: 'desktop program', settings: 'electron/main/vite.config.ts', sources, built: 'electron/dist/main.js' },
  {
    name: "desktop page's door",
    settings: 'electron/preload/vite.config.ts',
    sources,
    built: 'electron/dist/preload.cjs',
  },
];
