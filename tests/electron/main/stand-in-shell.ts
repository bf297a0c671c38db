import { EventEmitter } from 'node:events';

/* Replaces Electron in tests: it records calls and shows no window. */

export const requests: string[] = [];
export const permissions: Record<string, unknown> = {};
export const handlers = new Map<string, (event: unknown, input: unknown) => unknown>();
export const sent: unknown[] = [];
export const windows: BrowserWindow[] = [];
export const menus: unknown[] = [];
/** Which button of the next question is pressed. */
export const answers: number[] = [];
export const exposed: Record<string, unknown> = {};

const note = (what: string) => void requests.push(what);

export const app = Object.assign(new EventEmitter(), {
  isFirst: true,
  enableSandbox: () => note('sandbox for every page'),
  requestSingleInstanceLock: () => app.isFirst,
  whenReady: () => {
    note('waited until ready');
    return Promise.resolve();
  },
  quit: () => {
    note('quit');
    app.emit('will-quit');
  },
});

export const protocol = {
  registerSchemesAsPrivileged: (schemes: readonly { readonly scheme: string }[]) =>
    note(`schemes ${schemes.map(({ scheme }) => scheme).join()}`),
  handle: (scheme: string) => note(`files over ${scheme}`),
};

export const session = {
  defaultSession: {
    setPermissionRequestHandler: () => note('permissions refused'),
    setPermissionCheckHandler: () => note('permission checks refused'),
    setDevicePermissionHandler: () => note('devices refused'),
    on: (name: string) => note(`${name} looked at`),
  },
};

export const ipcMain = {
  handle: (channel: string, handler: (event: unknown, input: unknown) => unknown) =>
    void handlers.set(channel, handler),
};

export const screen = { getAllDisplays: () => [{ workArea: { x: 0, y: 0, width: 1920, height: 1080 } }] };

export const dialog = {
  showMessageBox: (
    _window: unknown,
    { message, signal }: { readonly message: string; readonly signal?: AbortSignal },
  ) => {
    note(`asked: ${message}`);
    const response = answers.shift();
    if (response !== undefined) return Promise.resolve({ response });
    return new Promise((closed) => signal?.addEventListener('abort', () => closed({ response: 0 })));
  },
  showMessageBoxSync: ({ detail }: { readonly detail: string }) => {
    note(`said: ${detail}`);
    return 1;
  },
};

export const Menu = {
  buildFromTemplate: (template: unknown) => template,
  setApplicationMenu: (menu: unknown) => {
    menus.push(menu);
    note('menu');
  },
};

export class BrowserWindow extends EventEmitter {
  readonly options: { readonly webPreferences: unknown };
  title = '';
  readonly webContents = Object.assign(new EventEmitter(), {
    getTitle: () => 'Size bench, Loamwright',
    reload: () => note('page again'),
    forcefullyCrashRenderer: () => note('page ended'),
    isDestroyed: () => false,
    send: (channel: string, news: unknown) => void sent.push([channel, news]),
    setWindowOpenHandler: () => note('new windows refused'),
  });

  constructor(options: { readonly webPreferences: unknown }) {
    super();
    this.options = options;
    windows.push(this);
    app.emit('web-contents-created', {}, this.webContents);
  }

  loadURL(address: string): Promise<void> {
    note(`page ${address}`);
    this.emit('ready-to-show');
    return Promise.resolve();
  }

  show(): void {
    note('shown');
  }

  focus(): void {
    note('brought forward');
  }

  setTitle(title: string): void {
    this.title = title;
  }

  isDestroyed(): boolean {
    return false;
  }

  isMinimized(): boolean {
    return false;
  }

  isMaximized(): boolean {
    return true;
  }

  getNormalBounds(): object {
    return { x: 10, y: 20, width: 1000, height: 700 };
  }
}

export const contextBridge = {
  exposeInMainWorld: (name: string, door: unknown) => {
    exposed[name] = door;
  },
};

export const ipcRenderer = Object.assign(new EventEmitter(), {
  invoke: (channel: string, input: unknown) => Promise.resolve([channel, input]),
});
