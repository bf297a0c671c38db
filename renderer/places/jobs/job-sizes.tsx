import { ChoiceField, SettledField, Fields } from '#renderer/kit/field.tsx';
import { sizesOf, sizeWords } from '#shared-calc/jobs/job-sheet.ts';
import { allLines } from '#shared-calc/jobs/worked-job.ts';
import { readSizes } from '#shared-calc/jobs/read-sizes.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';
import type { JobPart } from './job-part.ts';
import { MutedLine } from '#renderer/kit/muted.tsx';
import { PickTanks } from './pick-tanks.tsx';
import { SizeAnimals } from './size-animals.tsx';

/** The recipe, the kit level of the whole job and the sizes on its bench. */
export function JobSizes({ job, context, api }: JobPart) {
  const { records } = context;
  const sizes = sizesOf(records, job.id);
  const recipe = records.recipe.get(job.recipe);
  const settle = (text: string) => {
    const wanted = text.trim() === '' ? undefined : readSizes(text, records);
    if (wanted && !wanted.ok) return api.refuse(sayJobFault(wanted.fault));
    return api.doAct('setSizes', { job: job.id, sizes: [...(wanted?.value ?? [])] });
  };
  return (
    <section>
      <h3>Sizes</h3>
      <Fields look="wide">
        <SettledField
          label="Tanks, and how often each"
          hint="as T03, T07x2, T05:H3"
          text={sizes.map(sizeWords).join(', ')}
          settle={settle}
        />
        <Kit job={job} api={api} />
      </Fields>
      <PickTanks
        tanks={[...records.tank.values()]}
        sizes={sizes}
        put={(wanted) => void settle(wanted.map(sizeWords).join(', '))}
      />
      <SizeAnimals {...{ job, context, api }} />
      <MutedLine>
        {recipe?.id} {recipe?.title}.{' '}
        {sizes
          .map((size) => `${sizeWords(size)}: ${records.tank.get(size.tank)?.label ?? 'no longer in the tank book'}`)
          .join('; ')}
      </MutedLine>
    </section>
  );
}

/** The kit of every size without a kit of its own. */
function Kit({ job, api }: Pick<JobPart, 'job' | 'api'>) {
  const records = api.records.value;
  const worked = api.derived.value.job(job.id);
  const line = worked && allLines(worked).find(({ use }) => use === 'kit');
  if (!line) return null;
  const ofJob = [...records.localValue.values()].find(
    (value) => value.job === job.id && value.size === undefined && value.line === line.name,
  );
  const choose = (kit: string) => {
    const text = kit === line.text ? null : kit;
    return api.doAct('setValues', { job: job.id, writings: [{ line: line.name, text }], by: 'client' });
  };
  return (
    <ChoiceField
      label="Kit level"
      value={ofJob?.text ?? line.text}
      options={(line.options ?? []).map((kit) => ({
        value: kit,
        label: kit === line.text ? `${kit}, as the house` : kit,
      }))}
      choose={choose}
    />
  );
}
