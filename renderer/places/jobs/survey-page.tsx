import { AgainstList } from '#renderer/kit/against.tsx';
import { Answers } from '#renderer/kit/answers.tsx';
import { SettledField } from '#renderer/kit/field.tsx';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { writeCards } from '#renderer/frame/prepare-route.ts';
import { againstMove } from '#shared-calc/derive/against-move.ts';
import { surveyAnswers, type SurveyKey } from '#shared-calc/fields/survey.ts';
import { isBefore } from '#shared-calc/jobs/move-job.ts';
import {
  answerEntry,
  isAnswered,
  questionUnit,
  readAnswer,
  surveyField,
  surveySections,
  type SurveyQuestion,
} from '#shared-calc/jobs/survey-questions.ts';
import { unitWords } from '#shared-calc/quantity/unit-words.ts';
import { sayEntryFault } from '#shared-calc/words/say-entry-fault.ts';
import type { PlaceAct } from '#renderer/frame/frame-view.ts';
import type { JobPart } from './job-part.ts';
import css from './survey-page.module.css';

/** Every question of a job's survey. */
export function SurveyPage(part: JobPart) {
  return (
    <div class={css['work']}>
      <div class={css['survey']}>
        {surveySections.map(({ title, questions }) => (
          <section key={title}>
            <h2>{title}</h2>
            {questions.map((question) => (
              <Ask key={question.key} question={question} {...part} />
            ))}
          </section>
        ))}
        <section>
          <h2>Notes</h2>
          <Written {...part} name="notes" hint="Words in a note decide nothing." lines />
        </section>
        <BeforeSurveyed {...part} />
      </div>
    </div>
  );
}

/** The first answer moves an enquiry on to surveyed: what stands against that. */
function BeforeSurveyed({ job, context, api }: JobPart) {
  if (!isBefore(job.state, 'surveyed')) return null;
  const against = againstMove(api.derived.value, job.id, 'surveyed');
  return (
    <section>
      <h2>The first answer moves it on to surveyed</h2>
      <AgainstList against={against} display={context.display} />
    </section>
  );
}

/** What is done on the survey's page. */
export function surveyActs(job: string): readonly PlaceAct[] {
  return [
    { label: 'Back to the job', run: () => (location.hash = writeRoute('jobs', job)) },
    { label: 'Print to take along', run: () => (location.hash = writeCards(job, 'survey')) },
    { label: 'Next not asked', main: true, run: () => focusNext(document) },
  ];
}

/** Focuses the next question without an answer, from the focused one on; the first after the last. */
function focusNext(page: Document): void {
  const open = [...page.querySelectorAll<HTMLElement>('[data-unasked] :is(input:not([type="radio"]), input:checked)')];
  const from = page.activeElement;
  const isAfter = (one: HTMLElement) =>
    from !== null && Boolean(from.compareDocumentPosition(one) & Node.DOCUMENT_POSITION_FOLLOWING);
  (open.find(isAfter) ?? open[0])?.focus();
}

function Ask({ question: { key, limits }, ...part }: JobPart & { readonly question: SurveyQuestion }) {
  const { survey } = part.job;
  const value = survey[key];
  const unasked = isAnswered(survey, key) ? undefined : '';
  const answer = surveyAnswers.find((each) => each === value);
  return (
    <div class={css['ask']} data-unasked={unasked} data-question={key}>
      {surveyField(key).kind === 'choice' && answer !== undefined ? (
        <Answers
          label={surveyField(key).heading}
          aside={limits}
          value={answer}
          answers={surveyAnswers}
          choose={(text) => void write(part, key, text)}
        />
      ) : (
        <Written {...part} name={key} hint={unasked === undefined ? limits : `not asked; for ${limits}`} />
      )}
    </div>
  );
}

interface WrittenParts extends JobPart {
  readonly name: SurveyKey;
  readonly hint: string;
  readonly lines?: true;
}

function Written({ name, hint, lines, ...part }: WrittenParts) {
  const { kind, heading, longest = 2_000 } = surveyField(name);
  const unit = unitWords(questionUnit(name, part.context), '');
  return (
    <SettledField
      label={heading}
      hint={hint}
      {...(kind === 'words' ? { longest } : { figure: true })}
      {...(lines && { lines })}
      {...(unit !== '' && { unit })}
      text={answerEntry(part.job.survey, name, part.context)}
      settle={(text) => write(part, name, text)}
    />
  );
}

/** Writes an answer, or says at the field why not. */
function write({ job, context, api }: JobPart, key: SurveyKey, text: string): string | undefined {
  const read = readAnswer(key, text, context);
  if (!read.ok) return sayEntryFault(read.fault);
  return api.doAct('writeSurvey', { job: job.id, survey: read.value, figures: [] });
}
