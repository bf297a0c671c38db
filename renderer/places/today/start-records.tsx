import { useRef, useState } from 'preact/hooks';
import type { BookContext } from '#renderer/books/book-api.ts';
import { FieldEntry } from '#renderer/books/field-entry.tsx';
import { nextCode } from '#shared-calc/records/next-code.ts';
import { byCode } from '#renderer/books/record-table.ts';
import { afterFrame } from '#renderer/frame/after-frame.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Fields, TextField } from '#renderer/kit/field.tsx';
import { PickOne } from '#renderer/kit/pick-field.tsx';
import { Fault, Hint } from '#renderer/kit/note.tsx';
import type { JobApi } from '#renderer/store/job-api.ts';
import { headingOf } from '#shared-calc/fields/record-fields.ts';
import { added } from '#shared-calc/records/change.ts';
import { freshRecord, isField } from '#shared-calc/records/edit-field.ts';
import type { RecordOf } from '#shared-calc/records/records.ts';
import { withoutUndefined } from '#shared-calc/records/without-undefined.ts';

interface StartParts {
  readonly api: Pick<JobApi, 'doAct'>;
  readonly context: BookContext;
}

type NewKind = 'tank' | 'supplier';

interface NewParts<K extends NewKind> extends StartParts {
  readonly kind: K;
  readonly fresh: () => RecordOf<K>;
  readonly keys: readonly (string & keyof RecordOf<K>)[];
  readonly act: string;
  /** Completes the record as it is added. */
  readonly whole?: (record: RecordOf<K>) => RecordOf<K>;
  readonly hints?: Readonly<Partial<Record<string & keyof RecordOf<K>, string>>>;
  readonly done?: () => void;
}

/** A record that is written field by field, and is in the book once it is added. */
function NewRecord<K extends NewKind>(parts: NewParts<K>) {
  const { kind, fresh, keys, act, api, context, whole, hints, done } = parts;
  const form = useRef<HTMLDivElement>(null);
  // Fresh from the records of now: the code of one that was just added is taken.
  const [written, setWritten] = useState<RecordOf<K>>();
  const record = written ?? fresh();
  const [wrong, setWrong] = useState<string>();
  const add = () => {
    const refused = api.doAct('put', added(kind, whole ? whole(record) : record));
    setWrong(refused);
    if (refused !== undefined) return;
    setWritten(undefined);
    if (done) done();
    else afterFrame(() => form.current?.querySelector('input')?.focus());
  };
  const put = (to: RecordOf<K>) => {
    setWritten(to);
    setWrong(undefined);
    return undefined;
  };
  return (
    <div ref={form}>
      <Fields>
        {keys
          .filter((key) => isField(kind, record, key))
          .map((key) => (
            <FieldEntry
              key={`${record.id} ${key}`}
              kind={kind}
              record={record}
              field={key}
              {...(hints?.[key] !== undefined && { hint: hints[key] })}
              context={context}
              put={put}
            />
          ))}
      </Fields>
      {wrong !== undefined && <Fault role="alert">{wrong}</Fault>}
      <Buttons>
        <Button look="main" onClick={add}>
          {act}
        </Button>
      </Buttons>
    </div>
  );
}

interface OnceParts extends StartParts {
  /** Called once it is made. */
  readonly done: () => void;
}

export function NewTank({ api, context, done }: OnceParts) {
  const { records } = context;
  return (
    <NewRecord
      kind="tank"
      fresh={() =>
        freshRecord('tank', nextCode('T', records.tank.keys()), { frontBowMm: 0, sideReturnMm: 0, frontVentMm: 0 })
      }
      keys={[
        'label',
        'shape',
        'insideLengthMm',
        'insideDepthMm',
        'insideHeightMm',
        'sideReturnMm',
        'frontBowMm',
        'damHeightMm',
        'glassMm',
        'baseGlassMm',
      ]}
      hints={{ baseGlassMm: 'empty: as the walls' }}
      whole={(tank) => withoutUndefined({ ...tank, baseGlassMm: tank.baseGlassMm ?? tank.glassMm })}
      act="Add the tank"
      done={done}
      api={api}
      context={context}
    />
  );
}

export function NewSupplier({ api, context }: StartParts) {
  const { records } = context;
  return (
    <NewRecord
      kind="supplier"
      fresh={() => freshRecord('supplier', nextCode('S', records.supplier.keys()))}
      keys={['name', 'leadDays', 'carriageCoins']}
      act="Add the supplier"
      api={api}
      context={context}
    />
  );
}

/** The first job: a tank by a recipe. */
export function FirstJob({ api, context: { records }, done }: OnceParts) {
  const tanks = [...records.tank.values()].toSorted(byCode);
  const recipes = [...records.recipe.values()].toSorted(byCode);
  const [title, setTitle] = useState('');
  const [tank, setTank] = useState(tanks[0]?.id ?? '');
  const [recipe, setRecipe] = useState(recipes[0]?.id ?? '');
  const [wrong, setWrong] = useState<string>();
  const begin = () => {
    const refused = api.doAct('newJob', { title, recipe, sizes: [{ tank, count: 1 }], writings: [], by: 'us' });
    setWrong(refused);
    if (refused === undefined) done();
  };
  if (tanks.length === 0 || recipes.length === 0)
    return <Hint>A job takes a tank and a recipe: give these first.</Hint>;
  return (
    <>
      <Fields>
        <TextField label={headingOf('job', 'title')} text={title} typing={setTitle} />
        <PickOne
          label="Tank"
          value={tank}
          options={tanks.map(({ id, label }) => ({ value: id, label: `${id} ${label}` }))}
          choose={setTank}
        />
        <PickOne
          label={headingOf('job', 'recipe')}
          value={recipe}
          options={recipes.map((each) => ({ value: each.id, label: `${each.id} ${each.title}` }))}
          choose={setRecipe}
          hint={records.recipe.get(recipe)?.note ?? ''}
        />
      </Fields>
      {wrong !== undefined && <Fault role="alert">{wrong}</Fault>}
      <Buttons>
        <Button look="main" onClick={begin}>
          Begin the job
        </Button>
      </Buttons>
    </>
  );
}
