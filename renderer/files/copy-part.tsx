import { useState } from 'preact/hooks';
import { Checkbox } from '#renderer/kit/checkbox.tsx';
import { TextField } from '#renderer/kit/field.tsx';
import type { FilePart } from './file-part.ts';
import { DialogFoot } from './dialog-foot.tsx';

/** Saves a copy of the book; the open book stays open. */
export function CopyPart({ api, done }: FilePart) {
  const [path, setPath] = useState('');
  const [replace, setReplace] = useState(false);
  const [wrong, setWrong] = useState<string>();
  const save = async () => {
    const saved = await api.call('file.saveCopy', { path, replace });
    if (!saved.ok) return setWrong(saved.fault.says);
    api.say(`A copy is at ${saved.value.path}.`);
    done();
  };
  return (
    <>
      <TextField
        label="File, with its whole folder"
        text={path}
        typing={setPath}
        enter={() => void save()}
        wrong={wrong}
        hint="You go on in the book that is open"
      />
      <Checkbox label="Replace a file that is there" on={replace} turn={setReplace} />
      <DialogFoot done={done} act="Save the copy" may={path.trim() !== ''} run={() => void save()} />
    </>
  );
}
