import { contextBridge, ipcRenderer } from 'electron';

import { mapChannels } from '#shared-calc/contract/channel-names.ts';
import { doorName } from '#shared-calc/contract/desktop-door.ts';
import type { DesktopDoor } from '#shared-calc/contract/desktop-door.ts';
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

const door: DesktopDoor = { call, onNews };
contextBridge.exposeInMainWorld(doorName, door);
