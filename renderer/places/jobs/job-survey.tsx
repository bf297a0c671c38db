import { ChoiceField, SettledField } from '#renderer/kit/field.tsx';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { isBefore } from '#shared-calc/jobs/move-job.ts';
import { surveyJob } from '#shared-calc/jobs/survey-job.ts';
import type { JobPart } from './job-part.ts';
import { told } from '#renderer/store/money-hands.ts';
import { surveyRows, writeFound, type SurveyRow } from './survey-rows.ts';

/** What was measured where the tank is to stand: it holds for the whole job on its size bench. */
export function JobSurvey(part: JobPart) {
  const { job, context, hands } = part;
  const rows = surveyRows(context.records, job, context.display);
  if (rows.length === 0) return null;
  const taken = () => hands.act(told(surveyJob(hands.records.peek(), { job: job.id, figures: [] })));
  return (
    <section>
      <h3>Survey</h3>
      <div class="survey">
        {rows.map((row) => (
          <SurveyEntry key={row.line.name} row={row} {...part} />
        ))}
      </div>
      {isBefore(job.state, 'surveyed') && (
        <Buttons>
          <Button onClick={taken}>The site is surveyed</Button>
        </Buttons>
      )}
    </section>
  );
}

function SurveyEntry({ row, job, context: { display }, hands }: JobPart & { readonly row: SurveyRow }) {
  const write = (text: string | undefined) =>
    hands.act(writeFound(hands.records.peek(), { job: job.id, line: row.line, text }, display));
  const shown = { label: row.label, hint: standing(row) };
  return (
    <div class={row.ofJob ? 'of-job' : undefined}>
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

function standing({ ofJob, house, locals }: SurveyRow): string {
  const from = ofJob
    ? `whole job; the house has ${house.text}${house.unit === '' ? '' : `\u00a0${house.unit}`}`
    : 'as the house';
  return locals.length === 0 ? from : `${from}; ${locals.join(', ')} otherwise`;
}
