import { unasked } from '#shared-calc/fields/survey.ts';
import { workAmounts } from '#shared-calc/bench/order-amounts.ts';
import type { Bench, LiveBench } from '#shared-calc/bench/open-bench.ts';
import { animalsInCard, watchCards } from '#shared-calc/papers/watch-card.ts';
import { buildCards } from '#shared-calc/papers/build-card.ts';
import { handoverCards } from '#shared-calc/papers/handover-card.ts';
import { prepRows } from '#shared-calc/papers/prep-card.ts';
import { sizeCare } from '#shared-calc/prepare/size-care.ts';
import { surveyCard } from '#shared-calc/papers/survey-card.ts';
import { treatmentCard } from '#shared-calc/papers/treatment-card.ts';
import { treatLeaves } from '#shared-calc/prepare/treat-leaves.ts';
import { careDates } from '#shared-calc/prepare/care-calendar.ts';
import type { SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { treatmentWays, type TreatmentWay } from '#shared-calc/trade/heat/leaf-treatment.ts';
import { demoBench, demoOnce, demoPrices, demoRecords } from '#tests/demo-bench.ts';
import { demoPlan, mondayToFriday } from '#tests/shared-calc/prepare/demo-plan.ts';

export const records = demoRecords();

export const school = {
  client: 'Fernbank School',
  contact: '',
  site: '',
  access: '',
  audience: 'Reception class, under-fives',
  animals: 'Small poison frogs',
  survey: { ...unasked, underFives: 'yes', weakImmunity: 'no', publicRoom: 'no' },
} as const;

/** One T07 with every act there is: steam, a drain tap, a public place, mist. */
const everything: Readonly<Record<string, string>> = { kit: 'show', public_site: 'yes' };

export function cardBench(job: Readonly<Record<string, string>> = everything, recipe = 'H1'): LiveBench {
  return demoBench({ recipe, sizes: ['T07'], job }, records);
}

/** The cautions that each card of one T07 shows, in order; `build; Mesh` for an act of a card. */
export function cautionLists(
  job: Readonly<Record<string, string>>,
  recipe = 'H1',
): readonly (readonly [act: string, ids: readonly string[]])[] {
  const bench = demoOnce({ recipe, sizes: ['T07'], job }, records);
  const care = careDates('2027-04-28', mondayToFriday);
  const terms = { records, prices: demoPrices(records), display: plainDisplay, survey: unasked };
  const handed = { job: school, handover: '2027-04-28', care, workshop: workshopOf(records), display: plainDisplay };
  const lists: readonly (readonly [string, readonly SaidCaution[]])[] = [
    ['survey', surveyCard(school, { records, workshop: workshopOf(records), display: plainDisplay }).cautions],
    ...prepRows(demoPlan({ recipe, sizes: ['T07'], job }, { handover: '2027-04-28' }), {}).map(
      ({ act, cautions }) => [`prep; ${act}`, cautions] as const,
    ),
    ...treatmentWays.map((way) => [`treatment; ${way}`, treatmentCautionsOf(way)] as const),
    ...buildCards(bench, terms).flatMap((card) =>
      card.steps.map(({ title, cautions }) => [`build; ${title}`, cautions] as const),
    ),
    ...watchCards(bench, plainDisplay).map(({ cautions }) => ['watch', cautions] as const),
    [
      'animals in',
      animalsInCard({ build: '2027-04-07', settleInDays: 7, job: school, bench, display: plainDisplay }).cautions,
    ],
    ...handoverCards(bench, handed).map(({ cautions }) => ['handover', cautions] as const),
    ...sizeCare(bench, '2027-04-28', plainDisplay).map(({ cautions }) => ['care', cautions] as const),
  ];
  return lists.map(([act, cautions]) => [act, cautions.map(({ id }) => id ?? '')]);
}

function treatmentCautionsOf(way: TreatmentWay): readonly SaidCaution[] {
  const plan = treatLeaves({ way, aim: 'clean', leavesL: 43.51 }, { altitudeM: 650, pressureKpa: 103.421 });
  if (!plan.ok) throw new Error(plan.fault);
  return treatmentCard(way, plan.value).cautions;
}

/** Minutes of all work lines of a size, but those named. */
export function workMinutes(bench: Bench, without: readonly string[]): number {
  const work = workAmounts(bench, ['T07']);
  if (!work.ok) throw new Error(work.fault.kind);
  return work.value.filter(({ line }) => !without.includes(line)).reduce((sum, { amount }) => sum + amount, 0);
}
