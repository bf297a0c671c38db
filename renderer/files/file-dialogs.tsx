import type { FilePart } from './file-part.ts';
import { signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import type { PlaceAct } from '#renderer/frame/frame-view.ts';
import { useOpenSheet } from '#renderer/frame/use-open-sheet.ts';
import type { BookStore } from '#renderer/store/book-store.ts';
import { BackupsPart } from './backups-part.tsx';
import { CopyPart } from './copy-part.tsx';
import { NewPart } from './new-part.tsx';
import { OpenPart } from './open-part.tsx';

/** What acts over the file need of the store. */
export type FileApi = Pick<
  BookStore,
  'records' | 'derived' | 'info' | 'apply' | 'doAct' | 'say' | 'refuse' | 'call' | 'restore'
>;

export type FileSheetName = 'open' | 'new' | 'copy' | 'backups';

export interface FileSheets {
  readonly acts: readonly PlaceAct[];
  readonly open: (name: FileSheetName) => void;
  /** The sheet that is open, to be put somewhere on the page. */
  readonly sheet: () => ComponentChildren;
}

const titles: Readonly<Record<FileSheetName, string>> = {
  open: 'Open a book',
  new: 'A new book',
  copy: 'Save a copy',
  backups: 'Bring back a backup',
};

/** Opening, making, copying and bringing back books, each on its sheet. */
export function fileSheets(hands: FilePart['hands']): FileSheets {
  const now = signal<FileSheetName | undefined>(undefined);
  const open = (name: FileSheetName) => (now.value = name);
  return {
    open,
    acts: [
      { label: 'Backups', run: () => open('backups') },
      { label: 'Save a copy', run: () => open('copy') },
      { label: 'New book', run: () => open('new') },
      { label: 'Open a book', run: () => open('open') },
    ],
    sheet: () =>
      now.value && <FileSheet key={now.value} name={now.value} hands={hands} closed={() => (now.value = undefined)} />,
  };
}

interface SheetParts {
  readonly name: FileSheetName;
  readonly hands: FilePart['hands'];
  readonly closed: () => void;
}

function FileSheet({ name, hands, closed }: SheetParts) {
  const sheet = useOpenSheet();
  const done = () => sheet.current?.close();
  return (
    <dialog ref={sheet} class="sheet file-sheet" aria-labelledby="file-title" onClose={closed}>
      <h2 id="file-title">{titles[name]}</h2>
      {partOf(name, { hands, done })}
    </dialog>
  );
}

function partOf(name: FileSheetName, parts: FilePart) {
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
