import { useState } from 'preact/hooks';
import type { ActInputs } from '#shared-calc/acts/all-acts.ts';
import type { BookApi, BookContext } from '#renderer/books/book-api.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { FactList } from '#renderer/kit/fact-list.tsx';
import { Fields, TextField } from '#renderer/kit/field.tsx';
import { Flag } from '#renderer/kit/flag.tsx';
import { MutedLine } from '#renderer/kit/muted.tsx';
import { Fault, Hint } from '#renderer/kit/note.tsx';
import { sayDays } from '#shared-calc/prepare/say-day.ts';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import { batchesNow, type BatchNow } from '#shared-calc/prepare/animal-quarantine.ts';
import { readDay } from '#shared-calc/read/read-day.ts';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import type { AnimalKind } from '#shared-calc/records/records.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';
import { writeDay } from '#shared-calc/calendar/write-day.ts';
import { PlaceAnimals } from './place-animals.tsx';

interface BatchesParts {
  readonly kind: AnimalKind;
  readonly context: BookContext;
  readonly api: BookApi;
}

/** The batches of a kind of animal: how long each stands apart, what was seen, and where they go. */
export function AnimalBatches(parts: BatchesParts) {
  const { kind, context } = parts;
  const batches = batchesNow(context.records, context.today, kind.id);
  return (
    <section>
      <h3>Batches</h3>
      {batches.length === 0 && (
        <MutedLine>None is written down. Each stands apart {kind.quarantineDays} days.</MutedLine>
      )}
      {batches.map((now) => (
        <Batch key={now.batch.id} now={now} {...parts} />
      ))}
      <NewBatch {...parts} />
    </section>
  );
}

function Batch({ now, context, api }: BatchesParts & { readonly now: BatchNow }) {
  const { batch, placements } = now;
  return (
    <article aria-label={`Batch ${batch.id}`}>
      <h4>
        {batch.id}: {batch.count} animals
      </h4>
      <QuarantineWords now={now} context={context} />
      <FactList
        facts={[
          ['Came', `${paperDay(batch.cameOn, context.display)}, ${batch.from}`],
          ...(batch.joinedOn === undefined
            ? []
            : [['Last one joined', paperDay(batch.joinedOn, context.display)] as const]),
          ...batch.looks.map(({ on, seen }) => [`Seen ${paperDay(on, context.display)}`, seen] as const),
          ...batch.tests.map(
            ({ on, which, result }) => [`${which}, ${paperDay(on, context.display)}`, `${result} (vet)`] as const,
          ),
        ]}
      />
      {placements.length > 0 && (
        <ul>
          {placements.map(({ id, size, count, on, anyway, who }) => (
            <li key={id}>
              {count} into {size} on {paperDay(on, context.display)}
              {anyway !== '' &&
                ` although in quarantine: ${anyway} (${context.records.rate.get(who ?? '')?.label})`}{' '}
              <Button look="plain" onClick={() => api.doAct('takeBackAnimals', { placement: id })}>
                Take back
              </Button>
            </li>
          ))}
        </ul>
      )}
      <WriteDown now={now} context={context} api={api} />
      {now.unplaced > 0 && <PlaceAnimals now={now} context={context} api={api} />}
    </article>
  );
}

function QuarantineWords({
  now: { until, daysLeft, unplaced },
  context,
}: Pick<BatchesParts, 'context'> & { readonly now: BatchNow }) {
  const left = unplaced === 0 ? 'all are planned in' : `${unplaced} go nowhere yet`;
  return daysLeft === 0 ? (
    <p>
      Quarantine over since {paperDay(until, context.display)}; {left}.
    </p>
  ) : (
    <p>
      <Flag state="watch" sign="wait">
        {sayDays(daysLeft)} left
      </Flag>{' '}
      In quarantine until {paperDay(until, context.display)}; {left}.
    </p>
  );
}

const many = { name: 'Animals', stored: 'each', low: 1, high: 9_999, whole: true };

type Noted = 'lookAtAnimals' | 'testAnimals' | 'joinAnimals';

/** A look, a test of the vet's or another animal; each on the day it is written. */
function WriteDown({ now: { batch }, context, api }: Omit<BatchesParts, 'kind'> & { readonly now: BatchNow }) {
  const [seen, setSeen] = useState('');
  const [which, setWhich] = useState('');
  const [result, setResult] = useState('');
  const [joined, setJoined] = useState('');
  const [wrong, setWrong] = useState<string>();
  const act = <N extends Noted>(name: N, input: ActInputs[N], done: () => void) =>
    setWrong(api.doAct(name, input, done));
  const join = () => {
    const count = said(readMeasure(joined, many, context.display));
    if (!count.ok) return setWrong(count.fault);
    return act('joinAnimals', { batch: batch.id, count: count.value ?? 0 }, () => setJoined(''));
  };
  return (
    <>
      <Fields>
        <TextField label="Seen today" of={batch.id} text={seen} typing={setSeen} />
        <TextField label="Test of the vet" of={batch.id} text={which} typing={setWhich} />
        <TextField label="What the vet found" of={batch.id} text={result} typing={setResult} />
        <TextField label="More animals joined" of={batch.id} figure text={joined} typing={setJoined} enter={join} />
      </Fields>
      {wrong !== undefined && <Fault>{wrong}</Fault>}
      <Buttons>
        <Button onClick={() => act('lookAtAnimals', { batch: batch.id, seen }, () => setSeen(''))}>
          Write the look
        </Button>
        <Button
          onClick={() =>
            act('testAnimals', { batch: batch.id, which, result }, () => {
              setWhich('');
              setResult('');
            })
          }
        >
          Write the test
        </Button>
        <Button onClick={join}>They joined</Button>
      </Buttons>
      <Hint>Another animal that joins starts the quarantine of all of them again.</Hint>
    </>
  );
}

function NewBatch({ kind, context, api }: BatchesParts) {
  const [count, setCount] = useState('');
  const [from, setFrom] = useState('');
  const [cameOn, setCameOn] = useState('');
  const [wrong, setWrong] = useState<string>();
  const write = () => {
    const animals = said(readMeasure(count, many, context.display));
    if (!animals.ok) return setWrong(animals.fault);
    const day = said(readDay(cameOn || context.today, 'Came on', { ...context, nearest: true }));
    if (!day.ok) return setWrong(day.fault);
    const batch = { kind: kind.id, count: animals.value ?? 0, from: from.trim() || 'own', cameOn: day.value };
    const clear = () => [setCount, setFrom, setCameOn].forEach((set) => set(''));
    return setWrong(api.doAct('newAnimalBatch', { ...batch, place: '', note: '' }, clear));
  };
  return (
    <>
      <h4>Another batch</h4>
      <Fields>
        <TextField label="Animals" of="the new batch" figure text={count} typing={setCount} enter={write} />
        <TextField label="From" hint="empty: our own" text={from} typing={setFrom} enter={write} />
        <TextField
          label="Came on"
          hint={`empty: ${writeDay(context.today, context.display.dateOrder)}`}
          text={cameOn}
          typing={setCameOn}
          enter={write}
          days={context}
        />
      </Fields>
      {wrong !== undefined && <Fault>{wrong}</Fault>}
      <Buttons>
        <Button look="main" onClick={write}>
          Write down a batch
        </Button>
      </Buttons>
    </>
  );
}
