import { contextBridge, ipcRenderer, webUtils } from 'electron';

import { mapChannels } from '#shared-calc/contract/channel-names.ts';
import { doorName } from '#shared-calc/contract/desktop-door.ts';
import type { DesktopDoor } from '#shared-calc/contract/desktop-door.ts';
import { fileCalls } from '#shared-calc/contract/file-calls.ts';
import { newsChannel } from '#shared-calc/contract/news-channel.ts';

/* One function a channel and nothing more: Electron's own sender is not exposed to the page. */
const call = mapChannels(
  (channel) =>
    (input: unknown): Promise<unknown> =>
      ipcRenderer.invoke(channel, input),
);

function onNews(listener: (news: unknown) => void): () => void {
  const hear = (_event: unknown, news: unknown) => listener(news);
  ipcRenderer.on(newsChannel, hear);
  return () => void ipcRenderer.removeListener(newsChannel, hear);
}

const files: DesktopDoor['files'] = {
  open: () => ipcRenderer.invoke(fileCalls.open),
  make: (begun) => ipcRenderer.invoke(fileCalls.make, begun),
  saveCopy: () => ipcRenderer.invoke(fileCalls.saveCopy),
  openDropped: (file) =>
    file instanceof File
      ? ipcRenderer.invoke(fileCalls.openDropped, webUtils.getPathForFile(file))
      : Promise.resolve(undefined),
};

const door: DesktopDoor = { call, files, onNews };
contextBridge.exposeInMainWorld(doorName, door);
