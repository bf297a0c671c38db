import { useState } from 'preact/hooks';
import type { ActInputs } from '#shared-calc/acts/all-acts.ts';
import type { BookContext } from '#renderer/books/book-api.ts';
import { FieldEntry } from '#renderer/books/field-entry.tsx';
import { Fields, FieldBox, TextField } from '#renderer/kit/field.tsx';
import { PickOne } from '#renderer/kit/pick-field.tsx';
import { goTo } from '#renderer/frame/go-to.ts';
import { contextMenuOf, type EntryMenu } from '#renderer/kit/context-menu.tsx';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { Button } from '#renderer/kit/button.tsx';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { Fault } from '#renderer/kit/note.tsx';
import type { JobApi } from '#renderer/store/job-api.ts';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import { isFlies } from '#shared-calc/prepare/culture-demands.ts';
import type { StandingTub } from '#shared-calc/prepare/standing-tub.ts';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { CultureKind, Job, Tub } from '#shared-calc/records/records.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';
import css from './cultures.module.css';
import { Muted } from '#renderer/kit/muted.tsx';

interface TubsParts {
  readonly standing: readonly StandingTub[];
  readonly kind: CultureKind;
  readonly api: JobApi;
  readonly context: BookContext;
  /** Jobs that may claim a tub. */
  readonly jobs: readonly Job[];
}

/** Every tub of a kind: what it has and may give, when it is ready and fed, which job claims it. */
export function TubList(parts: TubsParts) {
  const { standing, kind, context } = parts;
  return (
    <section>
      <h2>Tubs</h2>
      {standing.length === 0 ? (
        <EmptyNote>No tub of {kind.label} stands yet. Keep tubs in two places.</EmptyNote>
      ) : (
        <ul class={css['tubs']} aria-label="Tubs">
          {standing.map((each) => {
            const tub = context.records.tub.get(each.tub);
            return tub && <TubRow key={tub.id} {...parts} tub={tub} now={each} />;
          })}
        </ul>
      )}
    </section>
  );
}

type RowParts = Omit<TubsParts, 'standing'> & { readonly tub: Tub; readonly now: StandingTub };

function TubRow(parts: RowParts) {
  const { tub, now, kind, api, context } = parts;
  const change = (fields: ActInputs['changeTub']['fields']) => api.doAct('changeTub', { tub: tub.id, fields });
  const entry = (field: 'startedOn' | 'founders' | 'way' | 'degC' | 'place' | 'spare') => (
    <FieldEntry
      kind="tub"
      record={tub}
      field={field}
      context={context}
      put={(to) => change({ [field]: to[field] ?? null })}
    />
  );
  return (
    <li {...contextMenuOf(() => tubMenu(tub, api))}>
      <h3>
        {tub.id} <Muted>{stateWords(now, kind, context)}</Muted>
      </h3>
      <Fields>
        {entry('startedOn')}
        {entry('founders')}
        {entry('way')}
        {!isFlies(kind) && entry('degC')}
        <KeptFor {...parts} change={change} />
        {entry('place')}
        <FieldBox label="Beside">
          {entry('spare')}
          <Button look="plain" onClick={() => api.doAct('endTub', { tub: tub.id })}>
            End it
          </Button>
          <Button look="plain" onClick={() => api.doAct('removeTub', { tub: tub.id })}>
            Remove
          </Button>
        </FieldBox>
      </Fields>
      {!isFlies(kind) && <TakeOrCount {...parts} />}
    </li>
  );
}

function tubMenu({ id, claimedBy }: Tub, api: JobApi): EntryMenu {
  return {
    label: `Tub ${id}`,
    acts: [
      { says: 'End it', run: () => void api.doAct('endTub', { tub: id }) },
      { says: 'Remove', run: () => void api.doAct('removeTub', { tub: id }) },
      ...(claimedBy === undefined ? [] : ['line' as const, goTo(`Job ${claimedBy}`, 'jobs', claimedBy)]),
    ],
  };
}

interface KeptParts extends RowParts {
  readonly change: (fields: ActInputs['changeTub']['fields']) => string | undefined;
}

/** A finished job still appears if it claims the tub. */
function KeptFor({ tub, jobs, context, change }: KeptParts) {
  const own = context.records.job.get(tub.claimedBy ?? '');
  const claimed = own && !jobs.includes(own) ? [...jobs, own] : jobs;
  return (
    <PickOne
      label="Kept for"
      value={tub.claimedBy ?? ''}
      options={[
        { value: '', label: 'whichever comes' },
        ...claimed.map((job) => ({ value: job.id, label: jobName(job) })),
      ]}
      choose={(job) => void change({ claimedBy: job === '' ? null : job })}
    />
  );
}

const animals = { name: 'Animals', stored: 'each', low: 0, high: 10_000_000, whole: true };

/** Takes animals out for a job or to sell, or writes down what was counted. */
function TakeOrCount({ tub, now, jobs, api, context }: RowParts) {
  const [text, setText] = useState('');
  const [job, setJob] = useState(tub.claimedBy ?? '');
  const [wrong, setWrong] = useState<string>();
  const { decimalComma } = context.workshop;
  const act = (name: 'harvestTub' | 'countTub') => {
    const read = said(readMeasure(text, { ...animals, mayBeEmpty: name === 'harvestTub' }, { decimalComma }));
    if (!read.ok) return setWrong(read.fault);
    const done = () => setText('');
    if (name === 'countTub') return setWrong(api.doAct(name, { tub: tub.id, animals: read.value ?? 0 }, done));
    const amount = read.value === undefined ? {} : { amount: read.value };
    const wish = { tub: tub.id, sold: false, ...amount, ...(job !== '' && { job }) };
    return setWrong(api.doAct(name, wish, done));
  };
  const hint = now.mayTake === undefined ? undefined : `empty: all it may give`;
  return (
    <>
      <Fields>
        <TextField label="Animals" figure text={text} typing={setText} {...(hint !== undefined && { hint })} />
        <PickOne
          label="Taken for"
          value={job}
          options={[{ value: '', label: 'no job' }, ...jobs.map((each) => ({ value: each.id, label: jobName(each) }))]}
          choose={setJob}
        />
        <FieldBox label="Write down">
          <Button look="plain" onClick={() => act('harvestTub')}>
            Harvest
          </Button>
          <Button look="plain" onClick={() => act('countTub')}>
            Count
          </Button>
        </FieldBox>
      </Fields>
      {wrong !== undefined && <Fault>{wrong}</Fault>}
    </>
  );
}

function stateWords(now: StandingTub, kind: CultureKind, { workshop, today, display }: BookContext): string {
  const { is, readyOn, nextOn, feedOn } = now;
  const fed = feedOn === undefined ? '' : `, feed on ${paperDay(feedOn, display)}`;
  if (is === 'used up' || nextOn === undefined) return 'used up';
  const stage =
    is === 'growing'
      ? `grows, ready on ${paperDay(readyOn, display)}`
      : `ready since ${paperDay(readyOn, display)}${nextOn === today ? '' : `, next harvest on ${paperDay(nextOn, display)}`}`;
  return isFlies(kind) ? stage : `${animalWords(now, workshop)}; ${stage}${fed}`;
}

/** "13,594 animals (12,900 to 14,100), may give 6,797": with a range where a temperature makes one. */
function animalWords(
  { animals: known, from = 0, to = 0, mayTake = 0 }: StandingTub,
  workshop: BookContext['workshop'],
) {
  const write = (figure: number) => writeNumber(Math.floor(figure), 0, { decimalComma: workshop.decimalComma });
  if (known === undefined) return 'not known at this temperature: count it';
  const range = to - from > 1 ? ` (${write(from)} to ${write(to)})` : '';
  return `${write(known)} animals${range}, may give ${write(mayTake)}`;
}
