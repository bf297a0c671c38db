import { describe, expect, test } from 'vitest';

import type { News } from '#shared-calc/contract/news.ts';
import { menuOf } from '#electron/main/menu.ts';
import type { MenuActs, MenuState } from '#electron/main/menu.ts';
import { places } from '#shared-calc/contract/places.ts';

interface Item {
  readonly label?: string;
  readonly role?: string;
  readonly enabled?: boolean;
  readonly accelerator?: unknown;
  readonly submenu?: readonly Item[];
  readonly click?: () => void;
}

function menuAtHand(state: Partial<MenuState> = {}, platform = 'linux') {
  const done: string[] = [];
  const told: News[] = [];
  const note = (what: string) => () => void done.push(what);
  const acts: MenuActs = {
    newBook: (start) => done.push(`new ${start}`),
    open: note('open'),
    openRecent: (path) => done.push(path),
    saveCopy: note('save a copy'),
    restore: note('restore'),
    print: note('print'),
    printToFile: note('print to a file'),
    tell: (news) => told.push(news),
  };
  return { menu: menuOf(acts, { recent: [], ...state }, platform) as unknown as readonly Item[], done, told };
}

function titles(menu: readonly Item[], name: string): readonly (string | undefined)[] {
  return (menu.find(({ label }) => label === name)?.submenu ?? [])
    .map(({ label }) => label)
    .filter((label) => label !== undefined);
}

function clickAll(items: readonly Item[]): void {
  for (const { click, submenu } of items) {
    click?.();
    clickAll(submenu ?? []);
  }
}

describe('menuOf', () => {
  test('is in our own words', () => {
    const { menu } = menuAtHand();

    expect(menu.map(({ label }) => label)).toEqual(['&File', '&Edit', '&Places', '&View', '&Help']);
    expect(titles(menu, '&File')).toEqual([
      'New book',
      'Open a book …',
      'Open recent',
      'Save a copy …',
      'Restore a backup …',
      'Print …',
      'Save as PDF …',
      'Settings',
      'Quit',
    ]);
    expect(titles(menu, '&Help')).toEqual(['Help', 'Keys', 'About']);
    expect(titles(menu, '&Edit')).toEqual(['Undo', 'Redo', 'Cut', 'Copy', 'Paste', 'Find', 'Next flag']);
  });

  test('each entry does its act, and what the page does is asked of the page', () => {
    const { menu, done, told } = menuAtHand({ recent: ['/books/ferry.loamwright'] });
    clickAll(menu);

    expect(done).toEqual([
      'new full',
      'new house',
      'new empty',
      'open',
      '/books/ferry.loamwright',
      'save a copy',
      'restore',
      'print',
      'print to a file',
    ]);
    expect(told).toEqual([
      { is: 'go', place: 'workshop' },
      { is: 'do', act: 'undo' },
      { is: 'do', act: 'redo' },
      { is: 'do', act: 'find' },
      { is: 'do', act: 'next flag' },
      ...places.map(({ id }) => ({ is: 'go', place: id })),
      { is: 'do', act: 'help' },
      { is: 'go', place: 'keys' },
      { is: 'go', place: 'about' },
    ]);
  });

  test('undo and redo say what they would do, and are shut where there is nothing', () => {
    const steps = (state: Partial<MenuState>) =>
      (menuAtHand(state).menu[1]?.submenu ?? []).slice(0, 2).map(({ label, enabled }) => [label, enabled]);
    expect([steps({ undo: 'litter depth T03' }), steps({ redo: 'Clay & bark' })]).toEqual([
      [
        ['Undo: litter depth T03', true],
        ['Redo', false],
      ],
      [
        ['Undo', false],
        ['Redo: Clay && bark', true],
      ],
    ]);
  });

  test('offers nothing that opens the program’s inside', () => {
    const roles = JSON.stringify(menuAtHand().menu);

    expect(roles).not.toMatch(/devtools|reload/i);
  });
});
