import { actNames } from '#shared-calc/words/act-names.ts';
import type { FilePart } from './file-part.ts';
import { signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import type { PlaceAct } from '#renderer/frame/frame-view.ts';
import { Dialog } from '#renderer/kit/dialog.tsx';
import type { BookStore } from '#renderer/store/book-store.ts';
import { BackupsPart } from './backups-part.tsx';
import { CopyPart } from './copy-part.tsx';
import { NewPart } from './new-part.tsx';
import { OpenPart } from './open-part.tsx';
import css from './files.module.css';

/** What acts on the file need of the store. */
export type FileApi = Pick<
  BookStore,
  'records' | 'derived' | 'info' | 'doAct' | 'say' | 'refuse' | 'call' | 'restore' | 'desktop'
>;

export type FileDialogName = 'open' | 'new' | 'copy' | 'backups';

export interface FileDialogs {
  readonly acts: readonly PlaceAct[];
  readonly open: (name: FileDialogName) => void;
  /** The open dialog, to be rendered somewhere on the page. */
  readonly dialog: () => ComponentChildren;
}

const titles: Readonly<Record<FileDialogName, string>> = {
  open: actNames.openBook,
  new: 'A new book',
  copy: actNames.saveCopy,
  backups: actNames.restoreBackup,
};

/** Opens, creates, copies and restores books, each in its dialog. */
export function fileDialogs(api: FilePart['api']): FileDialogs {
  const now = signal<FileDialogName | undefined>(undefined);
  const open = (name: FileDialogName) => {
    // The shell has its own dialogs for what is chosen among the machine's files.
    if (api.desktop && name === 'open') void api.desktop.open();
    else if (api.desktop && name === 'copy') void api.desktop.saveCopy();
    else now.value = name;
  };
  return {
    open,
    acts: [
      { label: actNames.restoreBackup, run: () => open('backups') },
      { label: actNames.saveCopy, run: () => open('copy') },
      { label: actNames.newBook, run: () => open('new') },
      { label: actNames.openBook, run: () => open('open') },
    ],
    dialog: () =>
      now.value && <FileDialog key={now.value} name={now.value} api={api} closed={() => (now.value = undefined)} />,
  };
}

interface SheetParts {
  readonly name: FileDialogName;
  readonly api: FilePart['api'];
  readonly closed: () => void;
}

function FileDialog({ name, api, closed }: SheetParts) {
  return (
    <Dialog title={titles[name]} close={closed}>
      {(done) => <div class={css['dialog']}>{partOf(name, { api, done })}</div>}
    </Dialog>
  );
}

function partOf(name: FileDialogName, parts: FilePart) {
  switch (name) {
    case 'open':
      return <OpenPart {...parts} />;
    case 'new':
      return <NewPart {...parts} />;
    case 'copy':
      return <CopyPart {...parts} />;
    case 'backups':
      return <BackupsPart {...parts} />;
  }
}
