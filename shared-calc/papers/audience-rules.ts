import { HEALTH_LEAD, tellsOfUnderFives } from '#shared-calc/jobs/under-fives.ts';
import type { Job } from '#shared-calc/records/records.ts';

/** A reminder on a card, and who decides about it. */
export interface Reminder {
  readonly says: string;
  readonly decides: string;
}

const AUTHORITY = 'Wildlife authority';

const weak = /immun|chemo|transplant|hospital|hospice|clinic|ward|dialysis|pregnan|patient|weak/i;
const elderly = /over[\s-]*65|elder|care home|retire|pension|seniors?\b|all ages/i;

/**
 * Rules for the people near a tank with animals, from the job's own words about them: under-fives, people over 65, weak
 * immunity. The general rule is always included; the program never says that a tank is fit for an audience.
 */
export function audienceRules(job: Pick<Job, 'audience'>): readonly Reminder[] {
  if (job.audience.trim() === '') return peopleNear(job);
  const always = 'Carriers look healthy: everybody washes their hands after any contact with the tank or its water.';
  return [...peopleNear(job), { says: always, decides: HEALTH_LEAD }];
}

/** The rules without the general one, for a card that already has it as a caution. */
export function peopleNear({ audience }: Pick<Job, 'audience'>): readonly Reminder[] {
  const says = [
    ...(audience.trim() === ''
      ? ['Nobody has written down who is near the tank: ask for under-fives, people over 65 and weak immunity.']
      : []),
    ...(tellsOfUnderFives(audience)
      ? ['Under-fives come here: reptiles and amphibians should not be kept with them, nor in childcare rooms.']
      : []),
    ...(weak.test(audience)
      ? ['People with weak immunity may come here: they keep away from the animals, the tank and its water.']
      : []),
    ...(elderly.test(audience) ? ['People over 65 come here: they are at greater risk; no hands in the tank.'] : []),
  ];
  return says.map((each) => ({ says: each, decides: HEALTH_LEAD }));
}

const kinds: readonly (readonly [kind: RegExp, says: string])[] = [
  [
    /frog|toad|newt|salamander|amphib/i,
    'Most poison-frog kinds are listed: they need permits and proof of breeding (CITES).',
  ],
  [
    /gecko|lizard|skink|chameleon|reptile|snake|tortoise|turtle/i,
    'Some dwarf geckos and other reptiles are on the strictest list (CITES).',
  ],
];

/** Reminders of legal protection for the wanted animals: each names who to ask, and never predicts the answer. */
export function protectedKinds({ animals }: Pick<Job, 'animals'>): readonly Reminder[] {
  const says = [
    ...kinds.filter(([kind]) => kind.test(animals)).map(([, each]) => each),
    'Before animals are bought, moved or given away ask the wildlife authority; local invasive-species and disease rules too. Keep the papers of where they come from.',
  ];
  return says.map((each) => ({ says: each, decides: AUTHORITY }));
}
