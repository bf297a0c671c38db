import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { careRounds, type CareDate, type CareRound } from '#shared-calc/prepare/care-calendar.ts';
import type { StepCaution } from '#shared-calc/prepare/cautions.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { Job, Workshop } from '#shared-calc/records/records.ts';
import { audienceRules, protectedKinds, type Reminder } from './audience-rules.ts';
import { cautionsFor, type CautionOf } from './card-cautions.ts';
import { careFigures } from './care-card.ts';
import { fillWords, sizeFigures, type SizeFigures } from './size-figures.ts';

/** The page that stays with the tank. */
export interface HandoverCard {
  readonly size: string;
  readonly tank: string;
  readonly handover: Day;
  /** Where it must stay, and what is set. */
  readonly keep: readonly (readonly [what: string, is: string])[];
  readonly tasks: readonly { readonly when: string; readonly acts: readonly string[] }[];
  readonly normal: readonly string[];
  readonly notNormal: readonly (readonly [sign: string, act: string])[];
  /** Names and numbers to write in. */
  readonly people: readonly string[];
  readonly audience: readonly Reminder[];
  readonly protection: readonly Reminder[];
  /** The workshop's own terms. */
  readonly terms: readonly string[];
  readonly visits: readonly CareDate[];
  readonly cautions: readonly StepCaution[];
}

export interface HandoverTerms {
  readonly job: Pick<Job, 'audience' | 'animals'>;
  readonly handover: Day;
  readonly care: readonly CareDate[];
  readonly workshop: Pick<Workshop, 'terms'>;
  readonly display: Display;
}

export function handoverCards(bench: Bench, terms: HandoverTerms): readonly HandoverCard[] {
  return bench.input().columns.map(({ key, tank }) => {
    const figures = sizeFigures(bench, key, terms.display);
    const rounds = careRounds(terms.handover, careFigures(figures));
    return {
      size: key,
      tank: tank.label,
      handover: terms.handover,
      keep: keepRows(figures),
      tasks: tasksOf(figures, rounds),
      normal: normal.flatMap((sentence) => fillWords(sentence, figures) ?? []),
      notNormal: notNormal
        .filter(([, , when]) => when === undefined || figures.holds(when))
        .map(([sign, act]) => [sign, act]),
      people,
      audience: audienceRules(terms.job),
      protection: protectedKinds(terms.job),
      terms: terms.workshop.terms.split('\n').filter((line) => line.trim() !== ''),
      visits: terms.care,
      cautions: cautionsFor(handoverCautions, figures),
    };
  });
}

const kept: readonly (readonly [what: string, is: string])[] = [
  ['Temperature', '{species_floor} to {species_ceiling}'],
  ['Humidity', '{band_low} to {band_high}'],
  ['Humidity', 'about {tank_humidity}'],
  ['Light', '{light_hours}, on the timer'],
  ['Mist', '{mist_time} each time, {mist_cycles}'],
  ['Mist by hand', '{hand_mist}'],
  ['Vent strip', '{cover_vent}, always open'],
  ['Weight filled', '{filled_mass}, do not move it'],
];

/** One row a thing: a band before a single figure, a mist that there is a nozzle for. */
function keepRows(figures: SizeFigures): HandoverCard['keep'] {
  const rows = new Map<string, string>();
  for (const [what, is] of kept) {
    const words = fillWords(is, figures);
    const without = what === 'Mist' && !figures.holds('nozzles');
    if (words !== undefined && !without && !rows.has(what)) rows.set(what, words);
  }
  return [...rows];
}

function tasksOf(figures: SizeFigures, rounds: readonly CareRound[]): HandoverCard['tasks'] {
  const misted = figures.holds('nozzles');
  return [
    {
      when: 'Every day',
      acts: [
        'Look at the animals and count them; read maximum and minimum.',
        misted ? 'See that it mists and that the can has water.' : 'Mist with low-mineral water where it looks dry.',
        'Feed as the keeper has written down.',
      ],
    },
    {
      when: 'Every week',
      acts: [
        'Wipe the glass with water and a clean cloth.',
        'Take out what is dead or mouldy; look at the water under the mesh.',
      ],
    },
    ...rounds.map(({ act, says }) => ({ when: capital(says), acts: [roundActs[act]] })),
    {
      when: 'Every month',
      acts: [
        'Trim what touches glass or lamps; add leaves where soil shows.',
        'Try the timer and the residual-current switch.',
      ],
    },
    {
      when: 'Every year',
      acts: ['All the litter new; nozzles and filter descaled; seals looked at. Ours, at the yearly visit.'],
    },
  ];
}

const roundActs: Readonly<Record<CareRound['act'], string>> = {
  drain: 'Drain the water below the mesh, to the sewer; sooner where it smells sour.',
  'refill and clean': 'Empty and clean the can, then refill it with low-mineral water.',
};

const normal: readonly string[] = [
  'White mould on wood and leaves in the first month: the springtails eat it.',
  'Leaves that turn brown and thin, a plant that drops a leaf while it settles.',
  'Mist on the glass in the morning, gone by noon.',
];

const notNormal: readonly (readonly [sign: string, act: string, when?: string])[] = [
  ['Above 27 to 28 °C', 'Lights off, an ice bottle outside the glass, a fan across the top; call.'],
  ['Above 29 °C', 'An emergency: call at once.'],
  ['A sour smell, water at the mesh', 'Drain now, mist less, call.', 'drain_room'],
  ['It does not mist', 'Mist by hand with low-mineral water, call the fitter.', 'nozzles'],
  ['A lamp or a socket is wet', 'Switch off at the wall first, then call the electrician.'],
  ['An animal is out, hurt, thin or dead', 'Do not open anything else; call the keeper, then the vet.'],
];

const people: readonly string[] = [
  'Named person here',
  'Feeds the animals',
  'Feeds in the holidays',
  'Keeper',
  'Vet',
  'Electrician',
  'Our fitter',
];

const handoverCautions: readonly CautionOf[] = [
  'hands',
  'enquiry',
  'feeding',
  'heat',
  'cold',
  'sprays near the tank',
  'water',
  { step: 'reservoir', when: 'nozzles' },
  { step: 'drainage', when: 'drain_room' },
  'cover glass',
  'vents, doors, cables',
  'electrics',
  'lamp',
  { step: 'public place', when: 'public_site' },
  'microfauna',
  'lifting',
  'disease waste',
  'death',
];

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
