import { startDesktop } from './start-desktop.ts';

// Not awaited: the shell is ready only once this file has been read to its end.
void startDesktop();
