import { actNames } from '#shared-calc/words/act-names.ts';
import { useState } from 'preact/hooks';
import type { BookContext } from '#renderer/books/book-api.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Fields, TextField } from '#renderer/kit/field.tsx';
import { Hint } from '#renderer/kit/note.tsx';
import { Unseen } from '#renderer/kit/unseen.tsx';
import { Table } from '#renderer/kit/table.tsx';
import { watchFactors, watchLesson, type WatchFactor } from '#shared-calc/derive/watch-lesson.ts';
import { savedWatch } from '#shared-calc/prepare/saved-watch.ts';
import { plainNumber } from '#shared-calc/prepare/log-rows.ts';
import { calledOf } from '#shared-calc/recipe/column.ts';
import { keysOf } from '#shared-calc/fields/keys-of.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { sayActFault } from '#shared-calc/words/say-act-fault.ts';
import type { PrepareState } from './prepare-state.ts';

interface Parts {
  readonly state: PrepareState;
  readonly context: BookContext;
  readonly job: Job;
}

const labels: Readonly<Record<WatchFactor, string>> = {
  air: 'Air factor',
  damp: 'Damp factor',
  warm: 'Warming factor',
};

/** What kept watches say of the guesses, for each size that has one; applied only by a click. */
export function TeachFromWatch({ state, context, job }: Parts) {
  const [lost, setLost] = useState('');
  const lostMlPerDay = plainNumber(lost);
  const columns = context.job(job.id)?.sheet.columns ?? [];
  const watched = columns.filter(({ size }) => savedWatch(context.records, size) !== undefined);
  if (watched.length === 0) return null;
  const rows = watched.flatMap(({ key, label }) =>
    keysOf(watchFactors).map((factor) => {
      const lesson = watchLesson(context, { job: job.id, column: key, factor, lostMl: lostMlPerDay });
      const teach = (whom: 'house' | 'tank') => () => {
        const lossOf = lostMlPerDay !== undefined && { lostMlPerDay };
        const input = { job: job.id, column: key, factor, for: whom, ...lossOf };
        void state.api.editHouse({ act: 'teachFromWatch', input }, () => state.api.doAct('teachFromWatch', input));
      };
      return { key: `${key} ${factor}`, size: calledOf({ key, label }), what: labels[factor], lesson, teach };
    }),
  );
  return (
    <section>
      <h2>Teach from the watch</h2>
      <Hint>A kept watch that has the room beside the tank sets what was guessed. Nothing changes by itself.</Hint>
      <Fields look="short">
        <TextField label="Water lost a day" unit="mL" figure text={lost} typing={setLost} />
      </Fields>
      <Table
        scroll="Teach from the watch"
        rows={rows}
        keyOf={({ key }) => key}
        columns={[
          { head: 'Size', names: true, cell: ({ size }) => size },
          { head: 'Guess', cell: ({ what }) => what },
          { head: 'By the watch', cell: ({ lesson }) => (lesson.ok ? words(lesson.value) : sayActFault(lesson.fault)) },
          {
            head: <Unseen>act</Unseen>,
            cell: ({ lesson, teach }) =>
              lesson.ok && (
                <Buttons>
                  <Button onClick={teach('house')}>{actNames.teachHouse}</Button>
                  <Button onClick={teach('tank')}>This tank only</Button>
                </Buttons>
              ),
          },
        ]}
      />
    </section>
  );
}

interface Taught {
  readonly likely: number;
  readonly least: number;
  readonly most: number;
}

function words({ likely, least, most }: Taught): string {
  return `${likely} (${least} to ${most})`;
}
