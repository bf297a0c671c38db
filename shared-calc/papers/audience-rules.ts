import { peopleChecks } from '#shared-calc/jobs/place-checks.ts';
import type { Job } from '#shared-calc/records/records.ts';

/** A reminder on a card, and who decides about it. */
export interface Reminder {
  readonly says: string;
  readonly decides: string;
}

/** People near the tank whom its animals may make ill, as asked; a question that nobody asked stands here too. */
export function peopleNear({ survey }: Pick<Job, 'survey'>): readonly Reminder[] {
  return peopleChecks(survey)
    .filter(({ state }) => state !== 'holds')
    .map(({ says, decides }) => ({ says, decides }));
}

/** Reminder of legal protection: it names who to ask, and never predicts the answer. */
export const protectedKinds: readonly Reminder[] = [
  {
    says: 'Before animals are bought, moved or given away ask the wildlife authority; local invasive-species and disease rules too. Keep the papers of where they come from.',
    decides: 'Wildlife authority',
  },
];
