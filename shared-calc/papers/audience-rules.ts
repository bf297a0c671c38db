import { sayCaution, type CautionId, type SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import { tellsOfUnderFives } from '#shared-calc/jobs/under-fives.ts';
import type { Job } from '#shared-calc/records/records.ts';

const weak = /immun|chemo|transplant|hospital|hospice|clinic|ward|dialysis|pregnan|patient|weak/i;
const elderly = /over[\s-]*65|elder|care home|retire|pension|seniors?\b|all ages/i;

/**
 * Rules for the people near a tank with animals, from the job's own words about them: under-fives, people over 65, weak
 * immunity. The general rule is always included; the program never says that a tank is fit for an audience.
 */
export function audienceRules(job: Pick<Job, 'audience'>): readonly SaidCaution[] {
  return job.audience.trim() === '' ? peopleNear(job) : [...peopleNear(job), sayCaution('carriers')];
}

/** The rules without the general one, for a card that already has it as a caution. */
export function peopleNear({ audience }: Pick<Job, 'audience'>): readonly SaidCaution[] {
  const ids: readonly (readonly [applies: boolean, id: CautionId])[] = [
    [audience.trim() === '', 'audienceNotAsked'],
    [tellsOfUnderFives(audience), 'underFivesHere'],
    [weak.test(audience), 'weakImmunityHere'],
    [elderly.test(audience), 'over65Here'],
  ];
  return ids.filter(([applies]) => applies).map(([, id]) => sayCaution(id));
}

const kinds: readonly (readonly [kind: RegExp, id: CautionId])[] = [
  [/frog|toad|newt|salamander|amphib/i, 'frogsListed'],
  [/gecko|lizard|skink|chameleon|reptile|snake|tortoise|turtle/i, 'reptilesListed'],
];

/** Reminders of legal protection for the wanted animals: each names who to ask, and never predicts the answer. */
export function protectedKinds({ animals }: Pick<Job, 'animals'>): readonly SaidCaution[] {
  const listed = kinds.filter(([kind]) => kind.test(animals)).map(([, id]) => id);
  return [...listed, 'askAuthority' as const].map((id) => sayCaution(id));
}
