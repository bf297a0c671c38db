import { sayCaution, type CautionId, type SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import type { Survey, SurveyKey } from '#shared-calc/fields/survey.ts';

/** Answers that are no limit of the place, and what to mind with each. */
export const answersToMind: readonly (readonly [key: SurveyKey, answer: Survey[SurveyKey], id: CautionId])[] = [
  ['residualCurrentDevice', 'no', 'noResidualCurrent'],
  ['residualCurrentDevice', 'not asked', 'residualCurrentNotAsked'],
  ['socketNear', 'no', 'noSocketNear'],
  ['heaterNear', 'yes', 'heaterNear'],
];

/** What to mind where the tank is to stand, as asked: of the whole survey, or of one answer. */
export function surveyCautions(survey: Survey, of?: SurveyKey): readonly SaidCaution[] {
  return answersToMind
    .filter(([key, answer]) => survey[key] === answer && (of === undefined || key === of))
    .map(([, , id]) => sayCaution(id));
}
