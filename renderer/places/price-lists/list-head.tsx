import { useEffect, useState } from 'preact/hooks';
import type { BookContext } from '#renderer/books/book-api.ts';
import { Button } from '#renderer/kit/button.tsx';
import { ChoiceField } from '#renderer/kit/field.tsx';
import { Muted } from '#renderer/kit/muted.tsx';
import { Fault } from '#renderer/kit/note.tsx';
import { takePriceList } from '#shared-calc/acts/take-price-list.ts';
import { listEffects, type ListEffect } from '#shared-calc/derive/list-effect.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import { actNames } from '#shared-calc/words/act-names.ts';
import { sayListFault } from '#shared-calc/words/say-list-fault.ts';
import { ColumnsPart } from './columns-part.tsx';
import { importInput, unknownRows, type ListState, type Showing } from './list-state.ts';
import type { MatchedList, Matching } from './read-matching.ts';
import { sayEffect, sayTaken } from './say-list.ts';
import { WhoseList } from './source-part.tsx';
import css from './price-lists.module.css';

interface HeadParts {
  readonly state: ListState;
  readonly matching: Matching;
  readonly context: BookContext;
}

/** Over the rows: whose list, which columns, what it gives, and what that does to the quotes. */
export function ListHead({ state, matching, context }: HeadParts) {
  const read = state.read(context);
  if (!read) return null;
  return (
    <div class={css['head']}>
      <div class={css['line']}>
        <div class={css['whose']}>
          <WhoseList state={state} context={context} />
        </div>
        <p>
          <b>{matching.name}</b>{' '}
          <Button look="plain" onClick={state.close}>
            {actNames.anotherList}
          </Button>
        </p>
      </div>
      <ColumnsPart key={matching.text} state={state} matching={matching} read={read} context={context} />
      {read.ok ? (
        <>
          <p role="status">{sayTaken(read.value.placed, context.today)}</p>
          <Effects matched={read.value} supplier={matching.supplier} context={context} />
          <Bulk state={state} context={context} />
        </>
      ) : (
        <Fault>{sayListFault(read.fault)}</Fault>
      )}
    </div>
  );
}

const showns: readonly { readonly value: Showing; readonly label: string }[] = [
  { value: 'all', label: 'all rows' },
  { value: 'taken', label: 'rows that are taken' },
  { value: 'left', label: 'rows that are left' },
];

/** What is done with many rows at once. */
function Bulk({ state, context }: Pick<HeadParts, 'state' | 'context'>) {
  const unknown = unknownRows(state.allRows(context));
  const suggested = unknown.flatMap(({ row, suggested: goods }) =>
    goods ? [[row.row, { material: goods.id }] as const] : [],
  );
  const others = unknown.filter(({ suggested: goods, row }) => !goods && row.label !== '');
  const all = (act: 'new material' | 'leave', rows: typeof unknown) =>
    state.choose(rows.map(({ row, choice }) => [row.row, { ...choice, act }]));
  return (
    <div class={css['line']}>
      <ChoiceField
        quiet
        label="Rows shown"
        value={state.showing.value}
        options={showns}
        choose={(next) => (state.showing.value = showns.find(({ value }) => value === next)?.value ?? 'all')}
      />
      {suggested.length > 0 && (
        <Button onClick={() => state.choose(suggested)}>Take the {suggested.length} suggested</Button>
      )}
      {others.length > 0 && (
        <Button onClick={() => all('new material', others)}>New materials of the {others.length} with no match</Button>
      )}
      {unknown.length > 0 && (
        <Button onClick={() => all('leave', unknown)}>Leave out the {unknown.length} not known</Button>
      )}
    </div>
  );
}

interface EffectsParts {
  readonly matched: MatchedList;
  readonly supplier: string;
  readonly context: BookContext;
}

/** Sentences that stand at once; more jobs are counted. */
const SENTENCES = 3;

/** What the quotes come to with the list; worked after the rows are shown. */
function Effects({ matched, supplier, context }: EffectsParts) {
  const [effects, setEffects] = useState<readonly ListEffect[]>();
  useEffect(() => {
    setEffects(undefined);
    const work = setTimeout(() => {
      const change = takePriceList.run(context, importInput(matched, supplier));
      setEffects(change.ok ? listEffects(context, applyChange(context.records, change.value)) : []);
    }, 50);
    return () => clearTimeout(work);
  }, [matched, supplier, context.records]);
  if (supplier === '') return <p>Say whose list it is to import it.</p>;
  if (!effects) return <Muted>Working out what it changes …</Muted>;
  if (effects.length === 0) return <Muted>No quote that is still open changes by it today.</Muted>;
  const more = effects.length - SENTENCES;
  return (
    <ul class={css['effects']}>
      {effects.slice(0, SENTENCES).map((effect) => (
        <li key={effect.job}>{sayEffect(effect, context.workshop)}</li>
      ))}
      {more > 0 && <li>{more === 1 ? '1 more job changes' : `${more} more jobs change`}.</li>}
    </ul>
  );
}
