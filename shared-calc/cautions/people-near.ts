import { keysOf } from '#shared-calc/fields/keys-of.ts';
import type { Survey } from '#shared-calc/fields/survey.ts';
import type { CautionId } from './all-cautions.ts';

/** Questions about people whom animals may make ill, each with the caution that its answer calls for. */
const cautionsByAnswer = {
  underFives: { 'not asked': 'underFivesNotAsked', yes: 'underFivesHere' },
  weakImmunity: { 'not asked': 'weakImmunityNotAsked', yes: 'weakImmunityHere' },
} as const satisfies Readonly<Partial<Record<keyof Survey, Readonly<Record<'not asked' | 'yes', CautionId>>>>>;

export const peopleQuestions = keysOf(cautionsByAnswer);
export type PeopleQuestion = (typeof peopleQuestions)[number];

/** What is minded of such people, as they were asked for; nothing where none come. */
export function peopleCaution(survey: Survey, question: PeopleQuestion): CautionId | undefined {
  const answer = survey[question];
  return answer === 'no' ? undefined : cautionsByAnswer[question][answer];
}
