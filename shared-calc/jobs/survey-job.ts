import { linesAs } from '#shared-calc/recipe/lines-by-use.ts';
import { applyChange, type Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import { survey as questions, type Survey as Answers } from '#shared-calc/fields/survey.ts';
import type { Job, Line, Records } from '#shared-calc/records/records.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import { findJob } from './find-job.ts';
import type { JobFault } from './job-fault.ts';
import { isBefore } from './move-job.ts';
import { arrived } from './next-act.ts';
import { putRecords } from './put-records.ts';
import type { Writing } from './read-writing.ts';
import { setValues } from './set-values.ts';

/** What was found where the tank is to stand: answers, figures of the bench, and notes. */
export interface Survey extends Partial<Pick<Job, 'site' | 'access' | 'audience' | 'animals' | 'area' | 'typed'>> {
  readonly job: string;
  /** The answers that are new; the others stay. */
  readonly survey?: Partial<Answers>;
  readonly figures: readonly Omit<Writing, 'column'>[];
}

/** The lines that a survey gives figures for. */
export function surveyLines(lines: readonly Line[]): readonly Line[] {
  return linesAs(lines, 'survey');
}

/**
 * Records a survey: its answers and figures apply to the whole job, as ours. With one of them an enquiry moves to
 * *surveyed*; a text alone does not tell that anybody was there.
 */
export function surveyJob(records: Records, { job: id, figures, survey, ...words }: Survey): Result<Change, JobFault> {
  const found = findJob(records, id);
  if (!found.ok) return found;
  const values = setValues(records, { job: id, writings: figures, by: 'us' });
  if (!values.ok) return values;
  const withWords = { ...found.value, ...words, survey: { ...found.value.survey, ...survey } };
  const isFirst = isBefore(withWords.state, 'surveyed') && tellsOfPlace(survey ?? {}, figures);
  const job = isFirst ? arrived(withWords, 'surveyed') : withWords;
  const measured = applyChange(records, values.value);
  return ok(diffRecords(`${id}: survey`, records, { ...measured, job: putRecords(measured.job, [job]) }));
}

/** Whether there is an answer or a figure in a survey. */
function tellsOfPlace(survey: Partial<Answers>, figures: Survey['figures']): boolean {
  const answers = Object.entries(questions).filter(([, { kind }]) => kind !== 'words');
  const given = new Map<string, unknown>(Object.entries(survey));
  const isAnswer = (value: unknown) => value !== undefined && value !== null && value !== 'not asked';
  return (
    answers.some(([key]) => isAnswer(given.get(key))) ||
    figures.some(({ text }) => text !== undefined && text.trim() !== '')
  );
}
