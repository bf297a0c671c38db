import { useEffect, useState } from 'preact/hooks';
import { Button } from '#renderer/kit/button.tsx';
import { Fault, Hint } from '#renderer/kit/note.tsx';
import { Muted } from '#renderer/kit/muted.tsx';
import type { Output } from '#shared-calc/contract/channels.ts';
import type { FilePart } from './file-part.ts';
import { DialogFoot } from './dialog-foot.tsx';
import { pickBook, sendBook } from './send-book.ts';
import css from './files.module.css';

/** The books of the program's folder and those opened before, or a file that is sent. */
export function OpenPart({ api, done }: FilePart) {
  const [books, setBooks] = useState<Output<'file.recent'>['books']>([]);
  const [wrong, setWrong] = useState<string>();
  useEffect(() => {
    void api.call('file.recent', {}).then((told) => told.ok && setBooks(told.value.books));
  }, []);
  const open = async (book: string) => {
    const opened = await api.call('file.open', { book });
    if (!opened.ok) return setWrong(opened.fault.says);
    api.say(`${opened.value.name} is open.`);
    done();
  };
  const send = async (file: File) => {
    const sent = await sendBook(file);
    if (!sent.ok) return setWrong(sent.fault);
    api.say(`${sent.value} is open. The file that you chose stays as it is.`);
    done();
  };
  return (
    <>
      <ul class={css['recent']} aria-label="Books">
        {books.map(({ id, name, folder, open: isOpen }) => (
          <li key={id}>
            <Button look="plain" onClick={() => void open(id)}>
              {name}
            </Button>{' '}
            <Muted>
              {isOpen ? 'open now, ' : ''}
              {folder}
            </Muted>
          </li>
        ))}
      </ul>
      <Hint>A file from elsewhere is copied into the program’s folder and opened there.</Hint>
      {wrong !== undefined && <Fault role="alert">{wrong}</Fault>}
      <DialogFoot done={done} act="Choose a file" may run={() => pickBook(document, (file) => void send(file))} />
    </>
  );
}
