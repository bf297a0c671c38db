import { BrowserWindow, screen } from 'electron';

import { placeWindow, readWindowState, writeWindowState } from './window-state.ts';
import { pageAddress } from './trusted-url.ts';
import { pagePreferences } from './window-walls.ts';

/** Opens the window where it was last, on the page; it is shown when there is something to see. */
export async function openWindow(preload: string, stateFile: string): Promise<BrowserWindow> {
  const last = readWindowState(stateFile);
  const areas = screen.getAllDisplays().map((display) => display.workArea);
  const window = new BrowserWindow({
    ...placeWindow(last, areas),
    minWidth: 640,
    minHeight: 480,
    show: false,
    title: 'Loamwright',
    backgroundColor: '#f6f1e7',
    webPreferences: pagePreferences(preload),
  });
  if (last?.maximised) window.maximize();
  window.once('ready-to-show', () => window.show());
  window.on('close', () => {
    writeWindowState(stateFile, { ...window.getNormalBounds(), maximised: window.isMaximized() });
  });
  await window.loadURL(pageAddress);
  return window;
}
