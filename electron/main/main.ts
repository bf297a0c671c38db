import { startDesktop } from './start-desktop.ts';

// Not awaited: Electron is ready only after this file has been evaluated.
void startDesktop();
