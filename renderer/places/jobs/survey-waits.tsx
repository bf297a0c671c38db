import { Button } from '#renderer/kit/button.tsx';
import { Flag } from '#renderer/kit/flag.tsx';
import { MutedLine } from '#renderer/kit/muted.tsx';
import { PanelHead, SidePanel } from '#renderer/kit/side-panel.tsx';
import { settledLimits, waitingQuestions } from '#shared-calc/derive/survey-waits.ts';
import type { SurveyKey } from '#shared-calc/fields/survey.ts';
import { surveyField } from '#shared-calc/jobs/survey-questions.ts';
import { readUnits } from '#shared-calc/quantity/figure-words.ts';
import { limitWords } from '#shared-calc/papers/checks-paper.ts';
import { whoDecides } from '#shared-calc/words/who-decides.ts';
import type { JobPart } from './job-part.ts';
import css from './survey-page.module.css';

/** What nobody asked, most checks first, and what the answers settle. */
export function SurveyWaits({ job, context }: JobPart) {
  const worked = context.job(job.id);
  const waits = worked ? waitingQuestions(worked) : [];
  const settled = worked ? settledLimits(worked) : [];
  return (
    <SidePanel label="Checks of the place">
      <PanelHead
        where={`${job.id} ${job.title}, survey`}
        title="What waits, and for what"
        under={waits.length === 0 ? 'Every question has an answer.' : `${countOf(waits.length, 'answer')} missing`}
      />
      {waits.length > 0 && (
        <section>
          <h3>Ask these, most checks first</h3>
          <ul class={css['waits']}>
            {waits.map(({ key, ask, limits, checks }) => (
              <li key={key}>
                <Button look="plain" onClick={() => focusQuestion(document, key)}>
                  {surveyField(key).heading}
                </Button>
                {checks > 0 && <span>{countOf(checks, 'check')}</span>}
                <MutedLine>
                  For {limits}. {ask.startsWith('measure') ? 'Measure it there.' : `Ask the ${ask}.`}
                </MutedLine>
              </li>
            ))}
          </ul>
        </section>
      )}
      {settled.length > 0 && (
        <section>
          <h3>What the answers settle</h3>
          <ul class={css['waits']}>
            {settled.map(({ use, sizes, state, level, says, decides }) => (
              <li key={`${use} ${says}`}>
                <b>{limitWords[use]}</b>
                <Flag state={state === 'holds' ? 'holds' : level}>{state === 'fails' ? level : state}</Flag>
                <MutedLine>
                  {sizes.join(', ')}: {readUnits(says, context.display)}
                  {state !== 'holds' && ` ${whoDecides(decides)}.`}
                </MutedLine>
              </li>
            ))}
          </ul>
        </section>
      )}
      <MutedLine>Not asked is never passed. Words in a note decide nothing.</MutedLine>
    </SidePanel>
  );
}

function focusQuestion(page: Document, key: SurveyKey): void {
  page.querySelector<HTMLElement>(`[data-question="${key}"] :is(input:not([type="radio"]), input:checked)`)?.focus();
}

function countOf(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? '' : 's'}`;
}
