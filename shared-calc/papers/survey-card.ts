import { siteActs } from '#shared-calc/cautions/acts.ts';
import type { SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { peopleNear, protectedKinds } from './audience-rules.ts';
import { cautionsOf } from '#shared-calc/prepare/act-cautions.ts';

/** What to measure and ask where the tank will be placed, to fill in there. */
export interface SurveyCard {
  readonly known: readonly (readonly [what: string, is: string])[];
  readonly parts: readonly { readonly title: string; readonly asks: readonly string[] }[];
  readonly audience: readonly SaidCaution[];
  readonly protection: readonly SaidCaution[];
  readonly cautions: readonly SaidCaution[];
}

type Surveyed = Pick<Job, 'client' | 'contact' | 'site' | 'access' | 'audience' | 'animals'>;

export function surveyCard(job: Surveyed): SurveyCard {
  return {
    known: [
      ['Client', job.client],
      ['Speak to', job.contact],
      ['Place', job.site],
      ['Way in', job.access],
      ['Who is near it', job.audience],
      ['Animals', job.animals],
    ],
    parts: surveyParts,
    audience: peopleNear(job),
    protection: protectedKinds(job),
    cautions: cautionsOf(siteActs.survey),
  };
}

const surveyParts: SurveyCard['parts'] = [
  {
    title: 'Stand',
    asks: [
      'Shelf or stand, rated kg',
      'Level, mm over its length',
      'Clear length × depth × height, mm',
      'Door swing, mm',
    ],
  },
  { title: 'Way in', asks: ['Narrowest door, mm', 'Stairs, lift, turns', 'Parking, m away'] },
  {
    title: 'Air and light',
    asks: [
      'Room, hottest °C',
      'Room at weekends and holidays, least °C',
      'Humidity, %',
      'Sun on the place, from when to when',
      'Heater or air outlet within 2 m',
    ],
  },
  {
    title: 'Power and water',
    asks: ['Sockets, how many, where', 'Residual-current switch, mA', 'Tap and drain, m away', 'Water report seen'],
  },
  {
    title: 'People',
    asks: [
      'Ages near it',
      'Weak immunity',
      'Named person and number',
      'Who feeds, who in the holidays',
      'Noise allowed',
    ],
  },
];
