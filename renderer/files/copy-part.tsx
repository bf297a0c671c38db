import { Hint } from '#renderer/kit/note.tsx';
import type { FilePart } from './file-part.ts';
import { DialogFoot } from './dialog-foot.tsx';

/** Saves a copy of the book through the browser; the open book stays open. */
export function CopyPart({ api, done }: FilePart) {
  const save = async () => {
    // Answered after every edit that was sent before it.
    const told = await api.call('book.info', {});
    if (!told.ok) return;
    const link = document.createElement('a');
    link.href = '/copy';
    link.download = `Copy of ${told.value.name}`;
    link.click();
    api.say(`A copy of ${told.value.name} is saved by the browser.`);
    done();
  };
  return (
    <>
      <Hint>The whole book as one file, saved by the browser. You go on in the book that is open.</Hint>
      <DialogFoot done={done} act="Save the copy" may run={() => void save()} />
    </>
  );
}
