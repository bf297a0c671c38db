import type { BookApi, BookContext } from '#renderer/books/book-api.ts';
import { unitBeside } from '#renderer/books/record-columns.ts';
import { CautionPart } from '#renderer/kit/caution.tsx';
import { ChoiceField, Fields } from '#renderer/kit/field.tsx';
import { MutedLine } from '#renderer/kit/muted.tsx';
import { PanelHead } from '#renderer/kit/side-panel.tsx';
import type { Field } from '#shared-calc/fields/field.ts';
import { fieldsOf } from '#shared-calc/fields/record-fields.ts';
import { sourceFields, sourceMarks, type SourceMark } from '#shared-calc/fields/source.ts';
import { markWords } from '#shared-calc/bench/source-words.ts';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { sizeWords } from '#shared-calc/jobs/job-sheet.ts';
import { showField, valueOf } from '#shared-calc/records/field-text.ts';
import type { AnimalKind } from '#shared-calc/records/records.ts';
import { AnimalBatches } from './animal-batches.tsx';

export interface AnimalPanelParts {
  readonly kind: AnimalKind;
  readonly context: BookContext;
  readonly api: BookApi;
}

/** A kind of animal: where each of its figures is from, who is asked, and the sizes that name it. */
export function AnimalPanel(parts: AnimalPanelParts) {
  const { kind, context } = parts;
  return (
    <>
      <PanelHead where="Animal book" title={`${kind.id} ${kind.label}`.trim()} />
      <NamedBy kind={kind} context={context} />
      <AnimalBatches {...parts} />
      {kind.harmToPeople !== '' && (
        <CautionPart decides="Public-health office decides.">{kind.harmToPeople}</CautionPart>
      )}
      {kind.permits !== '' && <CautionPart decides="Wildlife authority decides.">{kind.permits}</CautionPart>}
      <Marks {...parts} />
    </>
  );
}

function NamedBy({ kind, context: { records } }: Omit<AnimalPanelParts, 'api'>) {
  const sizes = [...records.size.values()].filter(({ animalKind }) => animalKind === kind.id);
  if (sizes.length === 0) return <MutedLine>No size names it yet.</MutedLine>;
  const byJob = [...Map.groupBy(sizes, ({ job }) => job)];
  return (
    <section>
      <h3>Named by</h3>
      <ul>
        {byJob.map(([id, named]) => {
          const job = records.job.get(id);
          return (
            <li key={id}>
              {job ? jobName(job) : id}: {named.map(sizeWords).join(', ')}
            </li>
          );
        })}
      </ul>
    </section>
  );
}

/** A figure without a mark of its own has that of the whole kind. */
function Marks({ kind, context, api }: AnimalPanelParts) {
  const figures = fieldsOf('animalKind').filter(
    ([key, field]) => marked.includes(field.kind) && key !== 'id' && valueOf(kind, key) !== undefined,
  );
  const choose = (key: string, mark: string) => {
    const { [key]: _, ...others } = kind.marks ?? {};
    const chosen = sourceMarks.find((each) => each === mark);
    const marks: Record<string, SourceMark> = chosen === undefined ? others : { ...others, [key]: chosen };
    api.doAct('put', { kind: 'animalKind', record: { ...kind, marks } });
  };
  const options = sourceFields.source.options ?? [];
  const sayValue = (key: string, field: Field) =>
    `${showField(field, valueOf(kind, key), context)} ${unitBeside(field, context.display)}`.trim();
  return (
    <section>
      <h3>Where its figures are from</h3>
      <Fields>
        {figures.map(([key, field]) => (
          <ChoiceField
            key={key}
            label={field.heading}
            hint={`${sayValue(key, field)}, ${markWords(kind.marks?.[key] ?? kind.source)}`}
            value={kind.marks?.[key] ?? ''}
            options={[{ value: '', label: 'as the kind' }, ...options]}
            choose={(mark) => choose(key, mark)}
          />
        ))}
      </Fields>
    </section>
  );
}

const marked: readonly string[] = ['figure', 'count', 'yes no', 'reference'];
