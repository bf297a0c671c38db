import { calledOf } from '#shared-calc/recipe/column.ts';
import { capital } from '#shared-calc/rule/capital.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { careRounds, type CareDate, type CareRound } from '#shared-calc/prepare/care-calendar.ts';
import { siteActs } from '#shared-calc/cautions/acts.ts';
import type { CautionId, SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import { heatWords, type HeatWords } from '#shared-calc/prepare/heat-words.ts';
import type { UseName } from '#shared-calc/fields/uses.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { Job, Workshop } from '#shared-calc/records/records.ts';
import { harmOf, peopleNear, protectedKinds } from './audience-rules.ts';
import { cautionsFor } from '#shared-calc/prepare/act-cautions.ts';
import { careFigures } from '#shared-calc/prepare/size-care.ts';
import { sayAnimals } from '#shared-calc/jobs/animal-checks.ts';
import { surveyCautions } from '#shared-calc/jobs/survey-cautions.ts';
import { plantsReplacedDays, type PlantsPromise } from '#shared-calc/jobs/plants-replaced.ts';
import { fillWords, sizeFigures, type SizeFigures } from '#shared-calc/prepare/size-figures.ts';

/** A sign that something is wrong, and what to do about it. */
export interface HandoverSign {
  readonly sign: string;
  readonly act: string;
  /** The caution of the card that this sign states in full. */
  readonly caution?: CautionId;
}

/** The page that stays with the tank. */
export interface HandoverCard {
  readonly size: string;
  readonly called: string;
  readonly tank: string;
  readonly handover: Day;
  /** Where the tank must stay, and its settings. */
  readonly keep: readonly (readonly [what: string, is: string])[];
  readonly tasks: readonly { readonly when: string; readonly acts: readonly string[] }[];
  readonly normal: readonly string[];
  readonly notNormal: readonly HandoverSign[];
  /** Roles whose names and numbers are written in by hand. */
  readonly people: readonly string[];
  /** Reminders for special audiences; the caution for everybody is elsewhere on the card. */
  readonly audience: readonly SaidCaution[];
  readonly protection: readonly SaidCaution[];
  /** The replacement of plants, if it is promised, then the workshop's own terms. */
  readonly terms: readonly string[];
  readonly visits: readonly CareDate[];
  readonly cautions: readonly SaidCaution[];
}

export interface HandoverTerms {
  readonly job: Pick<Job, 'survey'>;
  readonly handover: Day;
  readonly care: readonly CareDate[];
  readonly workshop: Pick<Workshop, 'terms'> & PlantsPromise;
  readonly display: Display;
}

export function handoverCards(bench: Bench, terms: HandoverTerms): readonly HandoverCard[] {
  const { columns } = bench.input();
  const sizes = columns.map((column) => ({ ...column, figures: sizeFigures(bench, column.key, terms.display) }));
  const ours = [
    ...plantTerms(sizes, terms.workshop),
    ...terms.workshop.terms.split('\n').filter((line) => line.trim() !== ''),
  ];
  return sizes.map(({ key, label, tank, figures }) => {
    const rounds = careRounds(terms.handover, careFigures(figures));
    return {
      size: key,
      called: calledOf({ key, label }),
      tank: tank.label,
      handover: terms.handover,
      keep: keepRows(figures),
      tasks: tasksOf(figures, rounds),
      normal: normal.flatMap((sentence) => fillWords(sentence, figures) ?? []),
      notNormal: signsOf(figures),
      people,
      audience: [...peopleNear(terms.job), ...harmOf([figures.animals])],
      protection: protectedKinds([figures.animals]),
      terms: ours,
      visits: terms.care,
      cautions: [...surveyCautions(terms.job.survey), ...cautionsFor(siteActs.keeping, figures)],
    };
  });
}

const kept: readonly (readonly [what: string, is: string])[] = [
  ['Temperature', '{speciesFloor} to {speciesCeiling}'],
  ['Humidity', '{bandLow} to {bandHigh}'],
  ['Light', '{lightHours}, on the timer'],
  ['Mist', '{mistTime} each time, {mistCycles}'],
  ['Mist by hand', '{handMist}'],
  ['Vent strip', '{coverVent}, always open'],
  ['Weight filled', '{filledMass}, do not move it'],
];

/** One row for each quantity: a band before a single figure, misting only if there is a nozzle. */
function keepRows(figures: SizeFigures): HandoverCard['keep'] {
  const rows = new Map([['Animals', sayAnimals(figures.animals)]]);
  for (const [what, is] of kept) {
    const words = fillWords(is, figures);
    const without = what === 'Mist' && !figures.holds('nozzles');
    if (words !== undefined && !without && !rows.has(what)) rows.set(what, words);
  }
  return [...rows];
}

/** The most frequent task comes first. */
function tasksOf(figures: SizeFigures, rounds: readonly CareRound[]): HandoverCard['tasks'] {
  const misted = figures.holds('nozzles');
  const tasks = [
    {
      days: 1,
      when: 'Every day',
      acts: [
        'Look at the animals and count them; read maximum and minimum.',
        misted ? 'See that it mists and that the can has water.' : 'Mist with low-mineral water where it looks dry.',
        'Feed as the keeper has written down.',
      ],
    },
    {
      days: 7,
      when: 'Every week',
      acts: [
        'Wipe the glass with water and a clean cloth.',
        'Take out what is dead or mouldy; look at the water under the mesh.',
      ],
    },
    ...[...Map.groupBy(rounds, ({ says }) => says)].map(([says, same]) => ({
      days: same[0]?.everyDays ?? 0,
      when: capital(says),
      acts: same.map(({ act }) => roundActs[act]),
    })),
    {
      days: 30,
      when: 'Every month',
      acts: [
        'Trim what touches glass or lamps; add leaves where soil shows.',
        'Try the timer and the residual-current switch.',
      ],
    },
    {
      days: 365,
      when: 'Every year',
      acts: ['Nozzles and filter descaled and rinsed; seals looked at. Ours, at the yearly visit.'],
    },
  ];
  return tasks.toSorted((a, b) => a.days - b.days).map(({ when, acts }) => ({ when, acts }));
}

const roundActs: Readonly<Record<CareRound['act'], string>> = {
  'look at the leaves': 'Look at the leaves: where soil shows they go faster than reckoned.',
  'top up leaves': 'Top up the leaves with treated ones, to their depth on the first day.',
  drain: 'Drain the water below the mesh, to the sewer; sooner where it smells sour.',
  'refill and clean': 'Empty, clean and rinse the can, then refill it with low-mineral water.',
};

const normal: readonly string[] = [
  'White mould on wood and leaves in the first month: the springtails eat it.',
  'Leaves that turn brown and thin, a plant that drops a leaf while it settles.',
  'Mist on the glass in the morning, gone by noon.',
];

/** `when` is a use without which the sign is left out. */
const notNormal: readonly (HandoverSign & { readonly when?: UseName })[] = [
  {
    sign: 'A sour smell, water at the mesh',
    act: 'Drain now, mist less, call. Standing water stays below the mesh gap always.',
    caution: 'drainage',
    when: 'drainRoom',
  },
  { sign: 'It does not mist', act: 'Mist by hand with low-mineral water, call the fitter.', when: 'nozzles' },
  { sign: 'A lamp or a socket is wet', act: 'Switch off at the wall first, then call the electrician.' },
  { sign: 'An animal is out, hurt or thin', act: 'Do not open anything else; call the keeper, then the vet.' },
  {
    sign: 'An animal is dead',
    act: 'Stop, photograph, cool the body and do not freeze it, call the vet, hold all moves.',
    caution: 'death',
  },
];

function signsOf(figures: SizeFigures): HandoverCard['notNormal'] {
  const others = notNormal
    .filter(({ when }) => when === undefined || figures.holds(when))
    .map(({ sign, act, caution }) => ({ sign, act, ...(caution !== undefined && { caution }) }));
  return [tooWarm(heatWords(figures)), ...others];
}

function tooWarm({ above, emergency }: HeatWords): HandoverSign {
  const act = `Lights off, an ice bottle outside the glass, a fan across the top; call. ${emergency}`;
  return { sign: above, act, caution: 'tooWarm' };
}

/** The same sentence as on a quote of today. */
function plantTerms(sizes: readonly { readonly figures: SizeFigures }[], promise: PlantsPromise): readonly string[] {
  const kits = sizes.map(({ figures }) => (figures.has('kit') ? figures.words('kit') : ''));
  const days = plantsReplacedDays(kits, promise);
  return days === undefined ? [] : [`Plants that die within ${days} days are replaced once.`];
}

const people: readonly string[] = [
  'Named person here',
  'Feeds the animals',
  'Feeds in the holidays',
  'Keeper',
  'Vet',
  'Electrician',
  'Our fitter',
];
