import { useState } from 'preact/hooks';
import { useOwnId } from '#renderer/frame/use-own-id.ts';
import { TextEntry } from '#renderer/books/entry.tsx';
import type { FilePart } from './file-part.ts';
import { SheetFoot } from './sheet-foot.tsx';

/** The book written out as it stands; one goes on in the one that is open. */
export function CopyPart({ hands, done }: FilePart) {
  const replaceId = useOwnId();
  const [path, setPath] = useState('');
  const [replace, setReplace] = useState(false);
  const [wrong, setWrong] = useState<string>();
  const save = async () => {
    const saved = await hands.call('file.saveCopy', { path, replace });
    if (!saved.ok) return setWrong(saved.fault.says);
    hands.say(`A copy is at ${saved.value.path}.`);
    done();
  };
  return (
    <>
      <TextEntry
        label="File, with its whole folder"
        text={path}
        typing={setPath}
        enter={() => void save()}
        wrong={wrong}
        hint="You go on in the book that is open"
      />
      <p class="tick">
        <input
          id={replaceId}
          type="checkbox"
          checked={replace}
          onChange={(event) => setReplace(event.currentTarget.checked)}
        />{' '}
        <label for={replaceId}>Replace a file that is there</label>
      </p>
      <SheetFoot done={done} act="Save the copy" may={path.trim() !== ''} run={() => void save()} />
    </>
  );
}
