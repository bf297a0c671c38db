import { useState } from 'preact/hooks';
import { ChoiceField, TextField } from '#renderer/kit/field.tsx';
import { offeredBeginnings } from '#shared-calc/contract/beginnings.ts';
import type { FilePart } from './file-part.ts';
import { DialogFoot } from './dialog-foot.tsx';

const GUESSES = 'house, guesses';
const kinds: readonly { readonly value: string; readonly label: string; readonly holds: string }[] =
  offeredBeginnings.flatMap(({ start, label, holds }) => [
    { value: start, label, holds },
    ...(start === 'house'
      ? [
          {
            value: GUESSES,
            label: `${label}, and the demo’s prices as guesses`,
            holds: `${holds} The demo’s prices stand in as guesses: with them a quote is worked, but not issued.`,
          },
        ]
      : []),
  ]);

/** A new book and what it begins with. */
export function NewPart({ api, done }: FilePart) {
  const [name, setName] = useState('');
  const { desktop } = api;
  const [kind, setKind] = useState<string>('house');
  const [wrong, setWrong] = useState<string>();
  const make = async () => {
    const guesses = kind === GUESSES;
    const start = offeredBeginnings.find((each) => each.start === kind)?.start ?? 'house';
    const begun = { start, ...(guesses && { guesses }) };
    if (desktop) {
      done();
      return desktop.make(begun);
    }
    const made = await api.call('file.new', { name, ...begun });
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
        hint={kinds.find(({ value }) => value === kind)?.holds ?? ''}
      />
      {!desktop && (
        <TextField
          label="Name of the book"
          text={name}
          typing={setName}
          enter={() => void make()}
          wrong={wrong}
          hint="It is made in the program’s own folder"
        />
      )}
      <DialogFoot done={done} act="Make it" may={desktop !== undefined || name.trim() !== ''} run={() => void make()} />
    </>
  );
}
