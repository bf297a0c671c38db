import { useEffect, useState } from 'preact/hooks';
import type { Bridge } from '#renderer/bridge.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Muted } from '#renderer/kit/muted.tsx';
import { Fault, Hint } from '#renderer/kit/note.tsx';
import { Table } from '#renderer/kit/table.tsx';
import type { Output } from '#shared-calc/contract/channels.ts';
import { kindWords } from './kind-words.ts';

type Recovery = Output<'recovery.read'>;
type Salvage = NonNullable<Recovery['salvage']>;
type Backup = Recovery['backups'][number];

interface RecoveryParts {
  readonly call: Bridge['call'];
  readonly opened: () => void;
}

/** What brings back a book that cannot be opened: its backups, and what its file still gives. Nothing is overwritten. */
export function RecoveryPart({ call, opened }: RecoveryParts) {
  const [recovery, setRecovery] = useState<Recovery | 'none'>();
  const [said, setSaid] = useState<string>();
  const [wrong, setWrong] = useState<string>();
  const read = async () => {
    const answer = await call('recovery.read', {});
    // A page that never came to a book at all has nothing to bring back.
    setRecovery(answer.ok ? answer.value : 'none');
  };
  useEffect(() => void read(), []);
  if (!recovery) return <Hint>Looking through the backups and the file …</Hint>;
  if (recovery === 'none') return null;
  const open = async (channel: 'recovery.restore' | 'recovery.salvage', file?: string) => {
    const done = channel === 'recovery.salvage' ? await call(channel, {}) : await call(channel, { file: file ?? '' });
    if (done.ok) opened();
    else setWrong(done.fault.says);
  };
  const putAside = async () => {
    const done = await call('recovery.putAside', {});
    if (!done.ok) return setWrong(done.fault.says);
    setSaid(`The file is now called ${done.value.aside}.`);
    await read();
  };
  return (
    <>
      <Backups recovery={recovery} restore={(file) => void open('recovery.restore', file)} />
      {recovery.salvage && <SalvagePart salvage={recovery.salvage} run={() => void open('recovery.salvage')} />}
      {recovery.isThere && (
        <section aria-label="The file itself">
          <h2>The file itself</h2>
          <Hint>{`${recovery.path} stays as it is. Put aside, it keeps what it holds under another name in the same folder.`}</Hint>
          <Buttons>
            <Button onClick={() => void putAside()}>Put the file aside</Button>
          </Buttons>
        </section>
      )}
      <div aria-live="polite">
        {said !== undefined && <p>{said}</p>}
        {wrong !== undefined && <Fault>{wrong}</Fault>}
      </div>
    </>
  );
}

function Backups({ recovery, restore }: { readonly recovery: Recovery; readonly restore: (file: string) => void }) {
  const { backups, isThere } = recovery;
  const hint = isThere
    ? 'One that is restored takes the place of the book; the file that is there is put aside under a name with the day.'
    : 'One that is restored takes the place of the book.';
  return (
    <section aria-label="Backups">
      <h2>Backups</h2>
      {backups.length > 0 && <Hint>{hint}</Hint>}
      <Table
        label="Backups"
        rows={backups}
        keyOf={({ file }) => file}
        empty="No backup of this book was found beside it."
        columns={[
          { head: 'day', names: true, cell: ({ day }) => day },
          { head: 'jobs', figure: true, cell: ({ holds }) => holds?.jobs },
          { head: 'tanks', figure: true, cell: ({ holds }) => holds?.tanks },
          { head: 'materials', figure: true, cell: ({ holds }) => holds?.materials },
          { head: 'last edit', figure: true, cell: lastEdit },
          {
            cell: ({ file, day, holds }) =>
              holds && (
                <Button look="plain" aria-label={`Restore the backup of ${day}`} onClick={() => restore(file)}>
                  Restore this one
                </Button>
              ),
          },
        ]}
      />
    </section>
  );
}

/** Day and time here of the last edit that a backup has. */
function lastEdit({ holds }: Backup) {
  if (!holds) return <Muted>cannot be read</Muted>;
  const time = new Date(holds.lastEdit);
  const two = (part: number) => String(part).padStart(2, '0');
  const day = [time.getFullYear(), time.getMonth() + 1, time.getDate()].map(two).join('-');
  return `${day} ${two(time.getHours())}:${two(time.getMinutes())}`;
}

function SalvagePart({ salvage: { kinds, knowsLost }, run }: { readonly salvage: Salvage; readonly run: () => void }) {
  return (
    <section aria-label="What the file still gives">
      <h2>What the file still gives</h2>
      <Hint>
        It goes into a new book beside the file, with what is lost filled in from the newest backup.
        {!knowsLost &&
          ' What there was cannot be read in full: more may be lost, and what was removed since the backup may be back.'}
      </Hint>
      <Buttons>
        <Button onClick={run}>Make a book of what is left</Button>
      </Buttons>
      <Table
        label="What the file still gives"
        rows={kinds}
        keyOf={({ kind }) => kind}
        columns={[
          { head: 'of', names: true, cell: ({ kind }) => kindWords(kind) },
          { head: 'from the file', figure: true, cell: ({ came, filled }) => came - filled },
          { head: 'from the backup', figure: true, cell: ({ filled }) => filled || '' },
          { head: 'altered', figure: true, cell: ({ altered }) => altered || '' },
          { head: 'lost', figure: true, cell: ({ lost }) => lost || '' },
        ]}
      />
    </section>
  );
}
