import { Fields, SettledField } from '#renderer/kit/field.tsx';
import { PickOne } from '#renderer/kit/pick-field.tsx';
import { Caution } from '#renderer/kit/caution.tsx';
import type { SheetColumn } from '#shared-calc/jobs/job-sheet.ts';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import { calledOf } from '#shared-calc/recipe/column.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';
import type { JobPart } from './job-part.ts';

/** The kind of animal that each size is for, and how many. */
export function SizeAnimals(parts: JobPart) {
  const columns = parts.context.sheet(parts.job.id)?.columns ?? [];
  const unnamed = columns.filter(({ animals }) => animals?.kind === undefined && animals?.count !== 0);
  return (
    <>
      <Fields look="wide">
        {columns.map((column) => (
          <OneSize key={column.size} {...parts} column={column} />
        ))}
      </Fields>
      {unnamed.length > 0 && (
        <Caution>
          {unnamed.map(calledOf).join(', ')}: no kind named. Ceiling, floor and band are the house&apos;s.
        </Caution>
      )}
    </>
  );
}

/** No kind of the animal book: a tank of plants only. */
const PLANTS_ONLY = '-';

function OneSize({ job, context, api, column }: JobPart & { readonly column: SheetColumn }) {
  const { key, animals } = column;
  const called = calledOf(column);
  const kinds = [...context.records.animalKind.values()].map(({ id, label }) => ({ value: id, label }));
  const of = { job: job.id, column: key };
  const choose = (value: string) => {
    if (value === PLANTS_ONLY) return api.doAct('setAnimals', { ...of, animalKind: null, animals: 0 });
    const many = animals?.count === 0 ? { animals: null } : {};
    return api.doAct('setAnimals', { ...of, animalKind: value === '' ? null : value, ...many });
  };
  const settle = (text: string) => {
    const range = { name: 'How many', stored: 'each', low: 0, high: 9_999, whole: true, mayBeEmpty: true };
    const count = said(readMeasure(text, range, context.display));
    return count.ok ? api.doAct('setAnimals', { ...of, animals: count.value ?? null }) : count.fault;
  };
  return (
    <>
      <PickOne
        label={`Animals in ${called}`}
        value={animals?.count === 0 ? PLANTS_ONLY : (animals?.kind?.id ?? '')}
        options={[{ value: '', label: 'no kind named' }, { value: PLANTS_ONLY, label: 'plants only' }, ...kinds]}
        choose={choose}
      />
      <SettledField
        label={`How many in ${called}`}
        hint="in one build; empty: not said yet"
        figure
        text={animals?.count === undefined ? '' : String(animals.count)}
        settle={settle}
      />
    </>
  );
}
