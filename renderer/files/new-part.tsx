import { useState } from 'preact/hooks';
import { ChoiceField, TextField } from '#renderer/kit/field.tsx';
import type { FilePart } from './file-part.ts';
import { DialogFoot } from './dialog-foot.tsx';

const kinds = [
  { value: 'plain', label: 'for a workshop of your own' },
  { value: 'demo', label: 'the demo workshop, to try things in' },
] as const;

/** A new book: the demo's, or one that has the house recipes and the catalogues but no names and prices. */
export function NewPart({ api, done }: FilePart) {
  const [path, setPath] = useState('');
  const [kind, setKind] = useState<string>('plain');
  const [wrong, setWrong] = useState<string>();
  const make = async () => {
    const made = await api.call('file.new', { path, demo: kind === 'demo' });
    if (!made.ok) return setWrong(made.fault.says);
    api.say(`${made.value.name} is open.`);
    done();
  };
  return (
    <>
      <ChoiceField
        label="What it begins with"
        value={kind}
        options={kinds}
        choose={setKind}
        hint={
          kind === 'demo'
            ? 'Names, prices, stock and a job are invented.'
            : 'House recipes, tanks, goods, plants and cultures stay; prices, stock and clients do not.'
        }
      />
      <TextField
        label="File, with its whole folder"
        text={path}
        typing={setPath}
        enter={() => void make()}
        wrong={wrong}
        hint="The ending .loamwright is put on"
      />
      <DialogFoot done={done} act="Make it" may={path.trim() !== ''} run={() => void make()} />
    </>
  );
}
