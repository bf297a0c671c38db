import { useEffect, useState } from 'preact/hooks';
import { Button } from '#renderer/kit/button.tsx';
import { Fault, Hint } from '#renderer/kit/note.tsx';
import { Table } from '#renderer/kit/table.tsx';
import type { Output } from '#shared-calc/contract/channels.ts';
import { kindWords } from './kind-words.ts';
import type { FilePart } from './file-part.ts';
import { DialogFoot } from './dialog-foot.tsx';
import { Muted } from '#renderer/kit/muted.tsx';
import css from './files.module.css';

type Backups = Output<'file.backups'>['backups'];
type Preview = Output<'file.previewBackup'>;

const noBackup = 'There is no backup yet. One is made each day that the book is opened.';
const chooseDay = 'Choose a day to see what restoring it would change.';

/** The dated backups, what restoring one would change, and the restore, which *Undo* reverts. */
export function BackupsPart({ api, done }: FilePart) {
  const [backups, setBackups] = useState<Backups>();
  const [chosen, setChosen] = useState<string>();
  const [preview, setPreview] = useState<Preview>();
  const [wrong, setWrong] = useState<string>();
  useEffect(() => {
    void api
      .call('file.backups', {})
      .then((told) => (told.ok ? setBackups(told.value.backups) : setWrong(told.fault.says)));
  }, []);
  const look = async (file: string) => {
    setChosen(file);
    setPreview(undefined);
    const answer = await api.call('file.previewBackup', { file });
    if (answer.ok) setPreview(answer.value);
    setWrong(answer.ok ? undefined : answer.fault.says);
  };
  const restore = async () => {
    if (chosen === undefined) return;
    const restored = await api.restore(chosen);
    if (!restored.ok) return setWrong(restored.fault);
    api.say('The backup is restored. Undo takes that back.');
    done();
  };
  return (
    <>
      {backups && <Hint>{backups.length === 0 ? noBackup : chooseDay}</Hint>}
      <ul class={css['recent']}>
        {backups?.map(({ file, day, bytes }) => (
          <li key={file}>
            <Button look="plain" aria-pressed={file === chosen} onClick={() => void look(file)}>
              {day}
            </Button>{' '}
            <Muted>{sizeWords(bytes)}</Muted>
          </li>
        ))}
      </ul>
      <div aria-live="polite">
        {wrong !== undefined && <Fault>{wrong}</Fault>}
        {preview && <PreviewPart preview={preview} />}
      </div>
      <DialogFoot
        done={done}
        act="Restore it"
        may={preview !== undefined && preview.differences.length > 0}
        run={() => void restore()}
      />
    </>
  );
}

function PreviewPart({ preview: { differences, kept } }: { readonly preview: Preview }) {
  if (differences.length === 0) return <p>The book says the same as this backup.</p>;
  return (
    <>
      <h3>What would change</h3>
      <Table
        label="What would change"
        rows={differences}
        keyOf={({ kind }) => kind}
        columns={[
          { head: 'of', names: true, cell: ({ kind }) => kindWords(kind) },
          { head: 'come back', figure: true, cell: ({ added }) => added },
          { head: 'change', figure: true, cell: ({ changed }) => changed },
          { head: 'go', figure: true, cell: ({ removed }) => removed },
        ]}
      />
      {kept.length > 0 && <Hint>Stays although the backup has it not: {kept.join(', ')}.</Hint>}
    </>
  );
}

function sizeWords(bytes: number): string {
  return bytes < 1_000_000 ? `${Math.max(1, Math.round(bytes / 1_000))} kB` : `${(bytes / 1_000_000).toFixed(1)} MB`;
}
