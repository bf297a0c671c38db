import { schemaOf, type Field } from '#shared-calc/fields/field.ts';
import type { EntryFault } from '#shared-calc/read/entry-fault.ts';
import { withoutUndefined } from '#shared-calc/records/without-undefined.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import { survey as fields, type Survey, type SurveyKey } from '#shared-calc/fields/survey.ts';
import {
  entryOfField,
  parseField,
  showField,
  unitOfField,
  type FieldContext,
} from '#shared-calc/records/field-text.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { fieldAsTyped, textToKeep, typedText, withTyped, type TypedTexts } from '#shared-calc/records/typed-figure.ts';
import type { PlaceUse } from './place-checks.ts';

/** A question of the survey: what hangs on its answer, and whom to ask. */
export interface SurveyQuestion {
  readonly key: SurveyKey;
  readonly limits: string;
  readonly ask: string;
  /** The limit of the place that waits for it. */
  readonly use?: PlaceUse;
}

export interface SurveySection {
  readonly title: string;
  readonly questions: readonly SurveyQuestion[];
}

/** The questions in the order in which they are asked. */
export const surveySections: readonly SurveySection[] = [
  {
    title: 'People',
    questions: [
      { key: 'underFives', limits: 'animals, plants', ask: 'client', use: 'underFives' },
      { key: 'weakImmunity', limits: 'animals', ask: 'client', use: 'weakImmunity' },
      { key: 'publicRoom', limits: 'plants, door lock', ask: 'client' },
      { key: 'feeder', limits: 'care', ask: 'client' },
      { key: 'namedPerson', limits: 'handover', ask: 'client' },
    ],
  },
  {
    title: 'The place',
    questions: [
      { key: 'clearLengthMm', limits: 'outside size', ask: 'measure it there', use: 'clearSize' },
      { key: 'clearDepthMm', limits: 'outside size', ask: 'measure it there', use: 'clearSize' },
      { key: 'clearHeightMm', limits: 'outside size', ask: 'measure it there', use: 'clearSize' },
      { key: 'shelfRatingKg', limits: 'worst weight', ask: 'building owner', use: 'shelf' },
    ],
  },
  {
    title: 'The way in',
    questions: [
      { key: 'narrowestMm', limits: 'tank carried', ask: 'measure it there', use: 'wayIn' },
      { key: 'steps', limits: 'crew', ask: 'measure it there' },
      { key: 'lift', limits: 'crew', ask: 'caretaker' },
    ],
  },
  {
    title: 'Electricity and water',
    questions: [
      { key: 'socketNear', limits: 'lamps, pump', ask: 'caretaker' },
      { key: 'residualCurrentDevice', limits: 'lamps, pump', ask: 'qualified electrician' },
      { key: 'waterDistanceM', limits: 'care', ask: 'measure it there' },
      { key: 'drainDistanceM', limits: 'care', ask: 'measure it there' },
    ],
  },
  {
    title: 'Air, sun and noise',
    questions: [
      { key: 'sunHours', limits: 'hottest day', ask: 'caretaker', use: 'sun' },
      { key: 'sunAreaM2', limits: 'hottest day', ask: 'measure it there', use: 'sun' },
      { key: 'heaterNear', limits: 'hottest day', ask: 'caretaker' },
      { key: 'roomSummerC', limits: 'cool enough', ask: 'caretaker' },
      { key: 'roomWinterC', limits: 'warming', ask: 'caretaker' },
      { key: 'roomLowestC', limits: 'warm enough', ask: 'caretaker' },
      { key: 'humiditySummer', limits: 'too wet', ask: 'measure it there' },
      { key: 'humidityWinter', limits: 'too dry', ask: 'measure it there' },
      { key: 'noiseDb', limits: 'pump', ask: 'client' },
    ],
  },
];

/** The field of a question. */
export function surveyField(key: SurveyKey): Field {
  return fields[key];
}

/** Whether a question has an answer. Without sun on the glass there is no glass in the sun to measure. */
export function isAnswered(survey: Survey, key: SurveyKey): boolean {
  if (key === 'sunAreaM2' && survey.sunHours === 0) return true;
  const answer = survey[key];
  return answer !== null && answer !== '' && answer !== 'not asked';
}

/** Every question that nobody asked, in order. */
export function openQuestions(survey: Survey): readonly SurveyQuestion[] {
  return surveySections.flatMap(({ questions }) => questions).filter(({ key }) => !isAnswered(survey, key));
}

/** The answer as shown, with its unit; empty while there is none. */
export function answerWords({ survey, typed }: Surveyed, key: SurveyKey, context: FieldContext): string {
  const answer = survey[key];
  if (!isAnswered(survey, key)) return '';
  const field = surveyField(key);
  const asTyped = fieldAsTyped(field, typedText(typed, key, field, answer), context);
  if (asTyped?.whole) return asTyped.figure;
  const words = answer === null ? 'none' : (asTyped?.figure ?? showField(field, answer, context));
  const unit = typeof answer === 'number' ? questionUnit(key, context) : '';
  return unit === '' ? words : `${words}\u00a0${unit}`;
}

/** A job's survey, with its figures as they were typed. */
type Surveyed = Pick<Job, 'survey' | 'typed'>;

/** The unit that a question is answered in; empty for a count, a word or a yes and no. */
export function questionUnit(key: SurveyKey, { display }: Pick<FieldContext, 'display'>): string {
  const unit = unitOfField(surveyField(key), display);
  return unit === 'each' || unit === 'number' ? '' : unit;
}

const Answers = schemaOf(fields).partial();

/** What a person answers to a question, as it is typed; an empty text takes the answer back. */
export function readAnswer(key: SurveyKey, text: string, context: FieldContext): Result<Partial<Survey>, EntryFault> {
  const field = surveyField(key);
  const typed = text.trim() === '' && field.kind === 'choice' ? 'not asked' : text;
  const read = parseField(field, typed, context);
  return read.ok ? ok(withoutUndefined(Answers.parse({ [key]: read.value ?? null }))) : read;
}

/** The answer as a person would type it; empty while there is none. */
export function answerEntry({ survey, typed }: Surveyed, key: SurveyKey, context: FieldContext): string {
  if (!isAnswered(survey, key)) return '';
  const field = surveyField(key);
  const asTyped = fieldAsTyped(field, typedText(typed, key, field, survey[key]), context);
  return asTyped?.figure ?? entryOfField(field, survey[key] ?? undefined, context);
}

/** The texts to keep of a job's survey once an answer is typed. */
export function typedAnswer(job: Surveyed, key: SurveyKey, text: string, context: FieldContext): TypedTexts {
  return withTyped(job.typed, key, textToKeep(surveyField(key), text, context.display)) ?? {};
}

export function isSurveyKey(key: string): key is SurveyKey {
  return Object.hasOwn(fields, key);
}

/** How many questions there are, and how many have an answer. */
export function countAnswers(survey: Survey): { readonly all: number; readonly answered: number } {
  const all = surveySections.reduce((sum, { questions }) => sum + questions.length, 0);
  return { all, answered: all - openQuestions(survey).length };
}
