import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

import { chooseBook, makeBook, openChosen, previewWords, restoreChosen, saveCopyAs } from '#electron/main/file-menu.ts';
import type { FileMenu } from '#electron/main/file-menu.ts';
import { ask, jobOf, recordsOf, retitled, serviceAtHand, standing } from '#tests/electron/service/service-at-hand.ts';

/** The File menu over a real service; the user's answers are given in advance, and messages are recorded. */
function menuAtHand(answers: { readonly path?: string; readonly buttons?: readonly number[] }) {
  const at = serviceAtHand();
  const said: string[] = [];
  const buttons = [...(answers.buttons ?? [])];
  const filePath = answers.path === undefined ? '' : join(at.folder, answers.path);
  const canceled = answers.path === undefined;
  const dialog = {
    showOpenDialog: () => Promise.resolve({ canceled, filePaths: canceled ? [] : [filePath] }),
    showSaveDialog: () => Promise.resolve({ canceled, filePath }),
    showMessageBox: (
      _window: unknown,
      { message, buttons: shown }: { message: string; buttons: readonly string[] },
    ) => {
      said.push(message);
      return Promise.resolve({ response: buttons.shift() ?? shown.length - 1, checkboxChecked: false });
    },
  };
  const menu = { dialog, window: {}, call: at.service.call, files: at.service.files } as unknown as FileMenu;
  return { at, menu, said, filePath };
}

describe('the File menu', () => {
  test('makes a book where the person says', async () => {
    const { at, menu, filePath } = menuAtHand({ path: 'Ours.loamwright' });
    await makeBook(menu, { start: 'house' });

    expect(ask(at, 'book.info', {}).path).toBe(filePath);
    expect(recordsOf(at).job.size).toBe(0);
  });

  test('does nothing where the person leaves the dialog', async () => {
    const { at, menu, said } = menuAtHand({});
    const before = standing(at);
    await makeBook(menu, { start: 'plain' });
    await chooseBook(menu);
    await saveCopyAs(menu);
    await restoreChosen(menu);

    expect(standing(at)).toEqual(before);
    expect(said).toEqual(['Which backup?']);
  });

  test('says why a book is not opened', async () => {
    const { menu, said, at } = menuAtHand({});
    await openChosen(menu, join(at.folder, 'gone.loamwright'));

    expect(said).toEqual([`There is no book at ${join(at.folder, 'gone.loamwright')}.`]);
  });

  test('opens the book that is chosen', async () => {
    const { at, menu, filePath } = menuAtHand({ path: 'Copy.loamwright' });
    await saveCopyAs(menu);
    await chooseBook(menu);

    expect(ask(at, 'book.info', {}).path).toBe(filePath);
  });

  test('brings a backup back once the person has seen what that changes', async () => {
    const { at, menu, said } = menuAtHand({ buttons: [0, 0] });
    ask(at, 'book.apply', { ...standing(at), change: retitled(at, 'Quay hall') });
    await restoreChosen(menu);

    expect(jobOf(at).title).toBe('Ferry waiting hall');
    expect(said).toEqual([
      'Which backup?',
      'Restore Workshop 2027-03-10.loamwright? job: 1 changed. Undo takes it back.',
    ]);
  });
});

describe('previewWords', () => {
  test('a backup that is as the book is says so', () => {
    expect(previewWords({ differences: [], kept: [] })).toBe('It is the same as the book.');
  });

  test('issued quotes stay', () => {
    expect(
      previewWords({
        differences: [{ kind: 'size', added: 2, changed: 0, removed: 1 }],
        kept: ['issued quote Q-0001A'],
      }),
    ).toBe('size: 2 added, size: 1 removed. Issued quotes stay, with what they need. Undo takes it back.');
  });
});
