import { siteActs } from '#shared-calc/cautions/acts.ts';
import type { SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import {
  answerWords,
  isAnswered,
  questionUnit,
  surveyField,
  surveySections,
} from '#shared-calc/jobs/survey-questions.ts';
import { surveyCautions } from '#shared-calc/jobs/survey-cautions.ts';
import { unitWords } from '#shared-calc/quantity/unit-words.ts';
import type { FieldContext } from '#shared-calc/records/field-text.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { peopleNear, protectedKinds } from './audience-rules.ts';
import { cautionsOf } from '#shared-calc/prepare/act-cautions.ts';

/** What was asked where the tank is to stand, and what to measure and ask there still. */
export interface SurveyCard {
  readonly known: readonly (readonly [what: string, is: string])[];
  readonly parts: readonly {
    readonly title: string;
    readonly answers: readonly (readonly [what: string, is: string])[];
    readonly asks: readonly string[];
  }[];
  readonly audience: readonly SaidCaution[];
  readonly protection: readonly SaidCaution[];
  readonly cautions: readonly SaidCaution[];
}

type Surveyed = Pick<Job, 'client' | 'contact' | 'site' | 'access' | 'audience' | 'animals' | 'survey' | 'typed'>;

export function surveyCard(job: Surveyed, context: FieldContext): SurveyCard {
  return {
    known: [
      ['Client', job.client],
      ['Speak to', job.contact],
      ['Place', job.site],
      ['Way in', job.access],
      ['Who is near it', job.audience],
      ['Animals', job.animals],
      ['Notes', job.survey.notes],
    ],
    parts: surveySections.map(({ title, questions }) => ({
      title,
      answers: questions
        .filter(({ key }) => isAnswered(job.survey, key))
        .map(({ key }) => [surveyField(key).heading, answerWords(job, key, context)]),
      asks: [
        ...questions
          .filter(({ key }) => !isAnswered(job.survey, key))
          .map(({ key, ask }) => `${questionWords(key, context)}: ${askWords(ask)}`),
        ...(besides[title] ?? []),
      ],
    })),
    audience: peopleNear(job),
    protection: protectedKinds([]),
    cautions: [...surveyCautions(job.survey), ...cautionsOf(siteActs.survey)],
  };
}

function questionWords(key: Parameters<typeof surveyField>[0], context: FieldContext): string {
  const { heading, kind } = surveyField(key);
  if (kind === 'choice') return `${heading}, yes or no`;
  const unit = unitWords(questionUnit(key, context), context.display.currency);
  return unit === '' ? heading : `${heading}, ${unit}`;
}

/** `ask the caretaker`; what is measured says so itself. */
function askWords(ask: string): string {
  return ask.startsWith('measure') ? ask : `ask the ${ask}`;
}

/** What is looked at there besides, of which nothing is worked. */
const besides: Readonly<Record<string, readonly string[]>> = {
  People: ['Who feeds in the holidays, with a number'],
  'The place': ['Level, over its length', 'Door swing'],
  'The way in': ['Turns of the stairs', 'Parking, how far away'],
  'Electricity and water': ['Sockets, how many, where', 'Water report seen'],
};
