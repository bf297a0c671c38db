import { describe, expect, test, vi } from 'vitest';

import '#electron/preload/preload.ts';
import type { DesktopDoor } from '#shared-calc/contract/desktop-door.ts';
import { channelNames } from '#shared-calc/contract/channel-names.ts';
import { exposed, ipcRenderer } from '#tests/electron/main/stand-in-shell.ts';

vi.mock('electron', () => import('#tests/electron/main/stand-in-shell.ts'));

const door = exposed['loamwright'] as DesktopDoor;

describe('the page’s door', () => {
  test('is one function a channel and the news, and nothing of the shell', () => {
    expect(Object.keys(exposed)).toEqual(['loamwright']);
    expect(Object.keys(door)).toEqual(['call', 'files', 'onNews']);
    expect(Object.keys(door.call)).toEqual([...channelNames]);
    expect(Object.values(door.call)).not.toContain(ipcRenderer.invoke);
  });

  test('each function leads to its own channel alone, whatever else it is given', async () => {
    for (const channel of channelNames) {
      const call = door.call[channel] as (...given: unknown[]) => Promise<unknown>;
      expect(await call({ a: 1 }, 'file.open', { path: 'x' })).toEqual([channel, { a: 1 }]);
    }
  });

  test('news come without the shell’s event, until one stops listening', () => {
    const heard: unknown[] = [];
    const stop = door.onNews((...given: unknown[]) => heard.push(given));
    ipcRenderer.emit('news', { sender: ipcRenderer }, { is: 'opened' });
    stop();
    ipcRenderer.emit('news', { sender: ipcRenderer }, { is: 'opened' });

    expect(heard).toEqual([[{ is: 'opened' }]]);
  });
});
