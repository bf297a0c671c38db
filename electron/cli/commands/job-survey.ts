import { writeSurvey } from '#shared-calc/acts/job-acts.ts';
import { againstChange, allAgainst, type AgainstJob } from '#shared-calc/derive/against-change.ts';
import { derive, type Derived } from '#shared-calc/derive/derived.ts';
import { survey as fields, type Survey } from '#shared-calc/fields/survey.ts';
import { findJob } from '#shared-calc/jobs/find-job.ts';
import {
  answerWords,
  isAnswered,
  isSurveyKey,
  openQuestions,
  readAnswer,
  typedAnswer,
  surveySections,
} from '#shared-calc/jobs/survey-questions.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { didYouMean } from '#shared-calc/rule/did-you-mean.ts';
import type { TypedTexts } from '#shared-calc/records/typed-figure.ts';
import { sayActFault } from '#shared-calc/words/say-act-fault.ts';
import { sayEntryFault } from '#shared-calc/words/say-entry-fault.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';
import type { Command } from '#electron/cli/command.ts';
import { writeChange } from '#electron/cli/job-acts.ts';
import { refusal } from '#electron/cli/outcome.ts';
import { reasonOf, reasonOptions } from '#electron/cli/reason-options.ts';
import { sayAgainst } from '#electron/cli/say-against.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';
import { today } from '#electron/service/today.ts';

/** Shows what was asked at a job's place, or writes answers; `KEY=` takes one back. */
export const jobSurveyCommand: Command = {
  name: 'job survey',
  usage:
    'job survey J01 [underFives=no clearLengthMm=2480 roomLowestC= ...] [--anyway REASON --who R-builder]: what was asked at its place; KEY=ANSWER writes it, KEY= takes it back',
  options: { ...bookOption, ...reasonOptions },
  misuse: (given) => (given.words.length < 1 ? 'Say which job: job survey J01.' : undefined),
  run: (given) =>
    withBook(given, (book) => {
      const [id = '', ...texts] = given.words;
      const derived = derive(book.records(), today());
      const job = findJob(derived.records, id);
      if (!job.ok) return refusal(sayJobFault(job.fault));
      const answers = readAnswers(job.value, texts, derived);
      if (!answers.ok) return refusal(answers.fault);
      const moved: AgainstJob[] = [];
      if (texts.length > 0) {
        const input = { job: id, ...answers.value, figures: [], ...reasonOf(given) };
        const change = writeSurvey.run(derived, input);
        if (!change.ok) return refusal(sayActFault(change.fault));
        moved.push(...againstChange(derived, change.value));
        const says = writeChange(book, change.value);
        if (says !== undefined) return refusal(says);
      }
      const against = allAgainst(moved);
      const after = derived.update(book.records());
      const surveyed = after.records.job.get(id) ?? job.value;
      return {
        is: 'answer',
        json: { ...surveyJson(id, surveyed.survey), ...(moved.length > 0 && { against }) },
        table: () => surveyTable(surveyed, after),
        notices: sayAgainst(against),
      };
    }),
};

interface Answered {
  readonly survey: Partial<Survey>;
  readonly typed?: TypedTexts;
}

function readAnswers(job: Job, texts: readonly string[], derived: Derived): Result<Answered, string> {
  let answers: Partial<Survey> = {};
  let { typed } = job;
  for (const text of texts) {
    const [, key = text, answer] = /^([^=]*)=(.*)$/s.exec(text) ?? [];
    if (!isSurveyKey(key)) return failed(`The survey does not ask ${key}.${didYouMean(key, Object.keys(fields))}`);
    if (answer === undefined) return failed(`What is the answer? Write ${key}=...; ${key}= takes it back.`);
    const read = readAnswer(key, answer, derived);
    if (!read.ok) return failed(sayEntryFault(read.fault));
    answers = { ...answers, ...read.value };
    typed = typedAnswer({ ...job, typed }, key, answer, derived);
  }
  return ok({ survey: answers, ...(typed && { typed }) });
}

function surveyJson(job: string, survey: Job['survey']): Record<string, unknown> {
  return { job, survey, open: openQuestions(survey).map(({ key, limits, ask }) => ({ key, limits, ask })) };
}

function surveyTable(job: Job, derived: Derived): string {
  const rows = surveySections.flatMap(({ title, questions }) => [
    [title.toUpperCase()],
    ...questions.map(({ key, limits, ask }) => [
      fields[key].heading,
      key,
      isAnswered(job.survey, key) ? answerWords(job, key, derived) : `not asked: ${ask}, for ${limits}`,
    ]),
  ]);
  const table = textTable(['question', 'key', 'answer'], rows);
  const { notes } = job.survey;
  return notes === '' ? table : [table, '', notes].join('\n');
}
