import { ChoiceField, SettledField } from '#renderer/kit/field.tsx';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { withShownUnit } from '#shared-calc/recipe/typed-text.ts';
import { isBefore } from '#shared-calc/jobs/move-job.ts';
import { allLines } from '#shared-calc/jobs/worked-job.ts';
import type { JobPart } from './job-part.ts';
import { surveyRows, type SurveyRow } from './survey-rows.ts';
import { useMove } from './use-move.tsx';
import css from './jobs.module.css';

/** Measurements at the tank's future location; on the job's size bench they hold for the whole job. */
export function JobSurvey(part: JobPart) {
  const { job, context } = part;
  const { ask, dialog } = useMove(part);
  const worked = part.api.derived.value.job(job.id);
  const rows = surveyRows(context.records, { job, lines: worked ? allLines(worked) : [] }, context.display);
  if (rows.length === 0) return null;
  return (
    <section>
      <h3>Survey</h3>
      <div class={css['survey']}>
        {rows.map((row) => (
          <SurveyEntry key={row.line.name} row={row} {...part} />
        ))}
      </div>
      {isBefore(job.state, 'surveyed') && (
        <Buttons>
          <Button onClick={() => ask('surveyed')}>The site is surveyed</Button>
        </Buttons>
      )}
      {dialog}
    </section>
  );
}

function SurveyEntry({ row, job, context: { display }, api }: JobPart & { readonly row: SurveyRow }) {
  const { line } = row;
  const write = (typed: string | undefined) => {
    const text = typed === undefined ? null : withShownUnit(typed, line, display);
    return api.doAct('setValues', { job: job.id, writings: [{ line: line.name, text }], by: 'us' });
  };
  const shown = { label: row.label, hint: standing(row) };
  return (
    <div class={row.ofJob ? css['ofJob'] : undefined}>
      {row.options.length > 0 ? (
        <ChoiceField
          {...shown}
          value={row.text}
          options={row.options.map((word) => ({ value: word, label: word }))}
          choose={write}
        />
      ) : (
        <SettledField {...shown} figure unit={row.unit} text={row.text} settle={write} />
      )}
      {row.ofJob && (
        <Button look="plain" aria-label={`${row.label} back to house`} onClick={() => write(undefined)}>
          Back to house
        </Button>
      )}
    </div>
  );
}

function standing({ ofJob, ofSurvey, house, locals }: SurveyRow): string {
  const from = ofJob
    ? `whole job; the house has ${house.text}${house.unit === '' ? '' : `\u00a0${house.unit}`}`
    : ofSurvey
      ? 'as the survey'
      : 'as the house';
  return locals.length === 0 ? from : `${from}; ${locals.join(', ')} otherwise`;
}
