import { sayCaution, type CautionId, type SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import type { Job } from '#shared-calc/records/records.ts';

/** People near the tank whom its animals may make ill, as asked; a question that nobody asked stands here too. */
export function peopleNear({ survey: { underFives, weakImmunity } }: Pick<Job, 'survey'>): readonly SaidCaution[] {
  const ids: readonly (readonly [applies: boolean, id: CautionId])[] = [
    [underFives === 'not asked', 'underFivesNotAsked'],
    [underFives === 'yes', 'underFivesHere'],
    [weakImmunity === 'not asked', 'weakImmunityNotAsked'],
    [weakImmunity === 'yes', 'weakImmunityHere'],
  ];
  return ids.filter(([applies]) => applies).map(([, id]) => sayCaution(id));
}

/** Reminder of legal protection: it names who to ask, and never predicts the answer. */
export const protectedKinds: readonly SaidCaution[] = [sayCaution('askAuthority')];
