import { signal } from '@preact/signals';
import { useEffect, useState } from 'preact/hooks';
import type { ComponentChildren } from 'preact';
import { AskDialog } from '#renderer/kit/ask-dialog.tsx';
import type { FilePart } from './file-part.ts';
import { sendBook } from './send-book.ts';

export interface DroppedFiles {
  /** The question about a book that was dropped, to be rendered somewhere on the page. */
  readonly dialog: () => ComponentChildren;
}

interface DropApi {
  readonly api: FilePart['api'] & { readonly refuse: (sentence: string) => unknown };
  /** Takes a list: a price list or another table. */
  readonly takeList: (file: File) => void;
}

/** A file dropped on the window: a book is opened after a question, a list goes to its import, the rest is refused. */
export function droppedFiles({ api, takeList }: DropApi): DroppedFiles {
  const book = signal<File | undefined>(undefined);
  const take = (file: File) => {
    if (/\.loamwright$/i.test(file.name)) book.value = file;
    else if (/\.(?:csv|tsv|psv|txt|html?)$/i.test(file.name)) takeList(file);
    else
      api.refuse(
        `${file.name} is neither a book nor a price list: a book ends in .loamwright, a list in .csv or .txt.`,
      );
  };
  return {
    dialog: () => (
      <>
        <Listener take={take} />
        {book.value && <DroppedBook file={book.value} api={api} close={() => (book.value = undefined)} />}
      </>
    ),
  };
}

function Listener({ take }: { readonly take: (file: File) => void }): null {
  useEffect(() => {
    const onDrop = (event: DragEvent) => {
      const [file] = event.dataTransfer?.files ?? [];
      if (file) take(file);
    };
    document.addEventListener('drop', onDrop);
    return () => document.removeEventListener('drop', onDrop);
  }, []);
  return null;
}

interface DroppedParts {
  readonly file: File;
  readonly api: FilePart['api'];
  readonly close: () => void;
}

function DroppedBook({ file, api, close }: DroppedParts) {
  const [wrong, setWrong] = useState<string>();
  const open = async () => {
    if (api.desktop) {
      await api.desktop.openDropped(file);
      return true;
    }
    const sent = await sendBook(file);
    setWrong(sent.ok ? undefined : sent.fault);
    if (sent.ok) api.say(`${sent.value} is open.`);
    return sent.ok;
  };
  return (
    <AskDialog title={`Open ${file.name}?`} does="Open it" run={open} wrong={wrong} close={close}>
      {() => <p>{api.desktop ? 'The book that is open now is closed.' : 'A copy of it is taken in and opened.'}</p>}
    </AskDialog>
  );
}

/** A dropped file never takes the page away, whatever is open. */
export function holdPageOnDrop(page: Document): void {
  const stay = (event: DragEvent) => {
    if (event.dataTransfer?.types.includes('Files')) event.preventDefault();
  };
  page.addEventListener('dragover', stay);
  page.addEventListener('drop', stay);
}
