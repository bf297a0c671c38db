import { actNames } from '#shared-calc/words/act-names.ts';
import { basename } from 'node:path';

import type { MenuItemConstructorOptions } from 'electron';

import { type Beginning, offeredBeginnings } from '#shared-calc/contract/beginnings.ts';
import type { News } from '#shared-calc/contract/news.ts';
import { capital } from '#shared-calc/rule/capital.ts';
import { placeGroups, type PlaceEntry } from '#shared-calc/contract/places.ts';

/** What the menu can do. */
export interface MenuActs {
  readonly newBook: (start: Beginning) => void;
  readonly open: () => void;
  readonly openRecent: (path: string) => void;
  readonly saveCopy: () => void;
  readonly restore: () => void;
  readonly print: () => void;
  readonly printToFile: () => void;
  /** Sends the page a request. */
  readonly tell: (news: News) => void;
}

/** What the menu says of the book. */
export interface MenuState {
  readonly recent: readonly string[];
  /** What *Undo* would take back and *Redo* do again; absent if there is nothing. */
  readonly undo?: string | undefined;
  readonly redo?: string | undefined;
}

type Items = MenuItemConstructorOptions[];

/** The desktop's menu in the program's own words. */
export function menuOf(acts: MenuActs, state: MenuState, platform: string): Items {
  const own: Items = platform === 'darwin' ? [{ role: 'appMenu' }] : [];
  return [
    ...own,
    { label: '&File', submenu: fileItems(acts, state.recent, platform) },
    { label: '&Edit', submenu: editItems(acts, state) },
    { label: '&Places', submenu: placeItems(acts) },
    { label: '&View', submenu: viewItems },
    { label: '&Help', submenu: helpItems(acts) },
  ];
}

function fileItems(acts: MenuActs, recent: readonly string[], platform: string): Items {
  return [
    {
      label: actNames.newBook,
      submenu: offeredBeginnings.map(({ start, label }) => ({
        label: `${capital(label)} …`,
        ...(start === 'house' && { accelerator: 'CmdOrCtrl+N' }),
        click: () => acts.newBook(start),
      })),
    },
    { label: `${actNames.openBook} …`, accelerator: 'CmdOrCtrl+O', click: acts.open },
    {
      label: 'Open recent',
      enabled: recent.length > 0,
      submenu: recent.map((path) => ({ label: basename(path), sublabel: path, click: () => acts.openRecent(path) })),
    },
    { type: 'separator' },
    { label: `${actNames.saveCopy} …`, accelerator: 'CmdOrCtrl+Shift+S', click: acts.saveCopy },
    { label: `${actNames.restoreBackup} …`, click: acts.restore },
    { type: 'separator' },
    { label: `${actNames.print} …`, accelerator: 'CmdOrCtrl+P', click: acts.print },
    { label: `${actNames.savePdf} …`, click: acts.printToFile },
    { type: 'separator' },
    { label: actNames.settings, accelerator: 'CmdOrCtrl+,', click: () => acts.tell({ is: 'go', place: 'workshop' }) },
    { type: 'separator' },
    platform === 'darwin' ? { role: 'close' } : { label: 'Quit', role: 'quit' },
  ];
}

/** The page handles these keys itself; the menu only displays them. */
function editItems({ tell }: MenuActs, { undo, redo }: MenuState): Items {
  return [
    {
      label: stepLabel(actNames.undo, undo),
      enabled: undo !== undefined,
      accelerator: 'CmdOrCtrl+Z',
      registerAccelerator: false,
      click: () => tell({ is: 'do', act: 'undo' }),
    },
    {
      label: stepLabel(actNames.redo, redo),
      enabled: redo !== undefined,
      accelerator: 'CmdOrCtrl+Shift+Z',
      registerAccelerator: false,
      click: () => tell({ is: 'do', act: 'redo' }),
    },
    { type: 'separator' },
    { label: 'Cut', role: 'cut' },
    { label: 'Copy', role: 'copy' },
    { label: 'Paste', role: 'paste' },
    { type: 'separator' },
    {
      label: actNames.find,
      accelerator: 'CmdOrCtrl+F',
      registerAccelerator: false,
      click: () => tell({ is: 'do', act: 'find' }),
    },
    { label: actNames.nextFlag, click: () => tell({ is: 'do', act: 'next flag' }) },
  ];
}

/** `Undo: litter depth T03`; a menu takes a single `&` for the mark of a key. */
function stepLabel(act: string, does: string | undefined): string {
  return does === undefined ? act : `${act}: ${does.replaceAll('&', '&&')}`;
}

function placeItems({ tell }: MenuActs): Items {
  return placeGroups.flatMap((group, at): Items => [
    ...(at > 0 ? [{ type: 'separator' } as const] : []),
    ...group.entries.map((entry) => entryItem(entry, tell)),
  ]);
}

function entryItem({ title, parts }: PlaceEntry, tell: MenuActs['tell']): MenuItemConstructorOptions {
  const items = parts.map((part) => ({ label: part.title, click: () => tell({ is: 'go', place: part.id }) }));
  const [only] = items;
  return only && items.length === 1 ? only : { label: title, submenu: items };
}

/** All of it is in the program; no web address. */
function helpItems({ tell }: MenuActs): Items {
  return [
    {
      label: actNames.help,
      accelerator: 'F1',
      registerAccelerator: false,
      click: () => tell({ is: 'do', act: 'help' }),
    },
    { label: actNames.keys, click: () => tell({ is: 'go', place: 'keys' }) },
    { type: 'separator' },
    { label: actNames.about, click: () => tell({ is: 'go', place: 'about' }) },
  ];
}

const viewItems: Items = [
  { label: 'Larger', role: 'zoomIn' },
  { label: 'Smaller', role: 'zoomOut' },
  { label: 'Usual size', role: 'resetZoom' },
  { type: 'separator' },
  { label: 'Whole screen', role: 'togglefullscreen' },
];
