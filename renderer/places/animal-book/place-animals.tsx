import { useState } from 'preact/hooks';
import type { BookApi, BookContext } from '#renderer/books/book-api.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { ChoiceField, Fields, TextField } from '#renderer/kit/field.tsx';
import { PickOne } from '#renderer/kit/pick-field.tsx';
import { MutedLine } from '#renderer/kit/muted.tsx';
import { Fault } from '#renderer/kit/note.tsx';
import type { BatchNow } from '#shared-calc/prepare/animal-quarantine.ts';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';

interface PlaceParts {
  readonly now: BatchNow;
  readonly context: BookContext;
  readonly api: BookApi;
}

/** Plans animals of a batch into a size that names their kind; in quarantine only with a reason and a name. */
export function PlaceAnimals({ now: { batch, kind, unplaced, daysLeft }, context, api }: PlaceParts) {
  const { records, display } = context;
  const sizes = [...records.size.values()].filter(({ animalKind }) => animalKind === kind.id);
  const [size, setSize] = useState('');
  const [count, setCount] = useState('');
  const [reason, setReason] = useState(noReason);
  const [wrong, setWrong] = useState<string>();
  const [first] = sizes;
  if (!first) return <MutedLine>No size names this kind: name it on a job&apos;s sizes first.</MutedLine>;
  const place = () => {
    const range = { name: 'Animals', stored: 'each', low: 1, high: 9_999, whole: true };
    const animals = said(readMeasure(count || String(unplaced), range, display));
    if (!animals.ok) return setWrong(animals.fault);
    const { anyway, who } = reason;
    const input = { batch: batch.id, size: size || first.id, count: animals.value ?? 0, anyway, who };
    return setWrong(api.doAct('placeAnimals', input));
  };
  return (
    <>
      <Fields>
        <PickOne
          coded={false}
          label="They go into"
          value={size || first.id}
          options={sizes.map(({ id, job }) => ({
            value: id,
            label: `${id} ${records.job.get(job)?.title ?? ''}`.trim(),
          }))}
          choose={setSize}
        />
        <TextField
          label="How many"
          of={batch.id}
          hint={`empty: ${unplaced}`}
          figure
          text={count}
          typing={setCount}
          enter={place}
        />
        {daysLeft > 0 && <EarlyReason reason={reason} write={setReason} context={context} enter={place} />}
      </Fields>
      {wrong !== undefined && <Fault role="alert">{wrong}</Fault>}
      <Buttons>
        <Button onClick={place}>Plan them in</Button>
      </Buttons>
    </>
  );
}

interface ReasonParts {
  readonly reason: typeof noReason;
  readonly write: (reason: typeof noReason) => void;
  readonly context: BookContext;
  readonly enter: () => void;
}

const noReason = { anyway: '', who: '' };

/** Why animals go in before their quarantine is over, and who decides it. */
function EarlyReason({ reason, write, context, enter }: ReasonParts) {
  const people = [...context.records.rate.values()].map(({ id, label }) => ({ value: id, label }));
  return (
    <>
      <TextField
        label="Although in quarantine, because"
        text={reason.anyway}
        typing={(anyway) => write({ ...reason, anyway })}
        enter={enter}
      />
      <ChoiceField
        label="Who decides it"
        value={reason.who}
        options={[{ value: '', label: 'nobody named' }, ...people]}
        choose={(who) => write({ ...reason, who })}
      />
    </>
  );
}
