import { actNames } from '#shared-calc/words/act-names.ts';
import { CautionList } from '#renderer/kit/caution-list.tsx';
import { useRef, useState } from 'preact/hooks';
import { AgainstDialog } from '#renderer/kit/against-dialog.tsx';
import { AgainstList } from '#renderer/kit/against.tsx';
import { Answers } from '#renderer/kit/answers.tsx';
import { SettledField } from '#renderer/kit/field.tsx';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { writeCards } from '#renderer/frame/prepare-route.ts';
import { againstAct } from '#renderer/store/against-act.ts';
import type { ActInputs } from '#shared-calc/acts/all-acts.ts';
import { againstMove, type Against } from '#shared-calc/derive/against-move.ts';
import { surveyAnswers, type SurveyKey } from '#shared-calc/fields/survey.ts';
import { surveyCautions } from '#shared-calc/jobs/survey-cautions.ts';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { isBefore } from '#shared-calc/jobs/move-job.ts';
import {
  answerEntry,
  isAnswered,
  questionUnit,
  readAnswer,
  surveyField,
  surveySections,
  typedAnswer,
  type SurveyQuestion,
} from '#shared-calc/jobs/survey-questions.ts';
import { unitWords } from '#shared-calc/quantity/unit-words.ts';
import { sayEntryFault } from '#shared-calc/words/say-entry-fault.ts';
import type { PlaceAct } from '#renderer/frame/frame-view.ts';
import type { JobPart } from './job-part.ts';
import css from './survey-page.module.css';

/** Every question of a job's survey. */
export function SurveyPage(job: JobPart) {
  const { write, turn, dialog } = useAnswering(job);
  const part = { ...job, write };
  return (
    <div class={css['work']}>
      {dialog}
      <div class={css['survey']}>
        {surveySections.map(({ title, questions }) => (
          <section key={title}>
            <h2>{title}</h2>
            {questions.map((question) => (
              <Ask key={`${question.key} ${turn}`} question={question} {...part} />
            ))}
          </section>
        ))}
        <section>
          <h2>Notes</h2>
          <Written {...part} name="notes" hint="Words in a note decide nothing." lines />
        </section>
        <BeforeSurveyed {...job} />
      </div>
    </div>
  );
}

interface AskedAnswer {
  readonly input: ActInputs['writeSurvey'];
  readonly against: readonly Against[];
}

interface Answering extends JobPart {
  /** Writes an answer, or says at the field why not. */
  readonly write: (key: SurveyKey, text: string) => string | undefined;
}

/** Writes answers; where something stands against the move that comes with one, a dialog lists that first. */
function useAnswering({ job, context, api }: JobPart) {
  const [asked, setAsked] = useState<AskedAnswer>();
  // An answer that is given up leaves its radio button on: another turn draws the questions anew.
  const [turn, setTurn] = useState(0);
  const isWritten = useRef(false);
  const write: Answering['write'] = (key, text) => {
    const read = readAnswer(key, text, context);
    if (!read.ok) return sayEntryFault(read.fault);
    const typed = typedAnswer(job, key, text, context);
    const input = { job: job.id, survey: read.value, typed, figures: [] };
    const against = againstAct(api.derived.peek(), 'writeSurvey', input);
    if (against.length === 0) return api.doAct('writeSurvey', input);
    isWritten.current = false;
    setAsked({ input, against });
    return undefined;
  };
  const close = () => {
    setAsked(undefined);
    if (!isWritten.current) setTurn(turn + 1);
  };
  const dialog = asked && (
    <AgainstDialog
      title={`${jobName(job)}: surveyed`}
      does="Write the answer"
      against={asked.against}
      act={(reason) => {
        const refused = api.doAct('writeSurvey', { ...asked.input, ...reason });
        isWritten.current = refused === undefined;
        return refused;
      }}
      close={close}
      context={context}
    />
  );
  return { write, turn, dialog };
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
    { label: actNames.onPaper, run: () => (location.hash = writeCards(job, 'survey')) },
    { label: actNames.nextNotAsked, main: true, run: () => focusNext(document) },
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

function Ask({ question: { key, limits }, ...part }: Answering & { readonly question: SurveyQuestion }) {
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
          choose={(text) => void part.write(key, text)}
        />
      ) : (
        <Written {...part} name={key} hint={unasked === undefined ? limits : `not asked; for ${limits}`} />
      )}
      <CautionList cautions={surveyCautions(survey, key)} display={part.context.display} />
    </div>
  );
}

interface WrittenParts extends Answering {
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
      text={answerEntry(part.job, name, part.context)}
      settle={(text) => part.write(name, text)}
    />
  );
}
