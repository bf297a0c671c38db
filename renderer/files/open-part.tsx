import { useEffect, useState } from 'preact/hooks';
import { TextField } from '#renderer/kit/field.tsx';
import { Button } from '#renderer/kit/button.tsx';
import type { FilePart } from './file-part.ts';
import { DialogFoot } from './dialog-foot.tsx';
import css from './files.module.css';

/** Recent books, or another by its path. */
export function OpenPart({ api, done }: FilePart) {
  const [paths, setPaths] = useState<readonly string[]>([]);
  const [path, setPath] = useState('');
  const [wrong, setWrong] = useState<string>();
  useEffect(() => {
    void api.call('file.recent', {}).then((recent) => recent.ok && setPaths(recent.value.paths));
  }, []);
  const open = async (wanted: string) => {
    const opened = await api.call('file.open', { path: wanted });
    if (!opened.ok) return setWrong(opened.fault.says);
    api.say(`${opened.value.name} is open.`);
    done();
  };
  return (
    <>
      {paths.length > 0 && (
        <>
          <h3>Opened before</h3>
          <ul class={css['recent']}>
            {paths.map((each) => (
              <li key={each}>
                <Button look="plain" onClick={() => void open(each)}>
                  {each}
                </Button>
              </li>
            ))}
          </ul>
        </>
      )}
      <h3>Another</h3>
      <TextField
        label="File, with its whole folder"
        text={path}
        typing={setPath}
        enter={() => void open(path)}
        wrong={wrong}
        hint="A book ends in .loamwright"
      />
      <DialogFoot done={done} act="Open it" may={path.trim() !== ''} run={() => void open(path)} />
    </>
  );
}
