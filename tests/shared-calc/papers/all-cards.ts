import { workAmounts } from '#shared-calc/bench/order-amounts.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { animalsInCard, watchCards } from '#shared-calc/papers/watch-card.ts';
import { buildCards } from '#shared-calc/papers/build-card.ts';
import { handoverCards } from '#shared-calc/papers/handover-card.ts';
import { prepRows } from '#shared-calc/papers/prep-card.ts';
import { sizeCare } from '#shared-calc/prepare/size-care.ts';
import { surveyCard } from '#shared-calc/papers/survey-card.ts';
import { treatmentCard } from '#shared-calc/papers/treatment-card.ts';
import { treatLeaves } from '#shared-calc/prepare/treat-leaves.ts';
import { careDates } from '#shared-calc/prepare/care-calendar.ts';
import type { StepCaution } from '#shared-calc/prepare/cautions.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { demoBench, demoRecords } from '#tests/demo-bench.ts';
import { demoPlan, mondayToFriday } from '#tests/shared-calc/prepare/demo-plan.ts';

export const records = demoRecords();

export const school = {
  client: 'Fernbank School',
  contact: '',
  site: '',
  access: '',
  audience: 'Reception class, under-fives',
  animals: 'Small poison frogs',
};

/** One T07 with every act there is: steam, a drain tap, a public place, mist. */
const everything: Readonly<Record<string, string>> = { kit: 'show', public_site: 'yes' };

export function cardBench(job: Readonly<Record<string, string>> = everything, recipe = 'H1'): Bench {
  return demoBench({ recipe, sizes: ['T07'], job }, records);
}

/** The cautions of every printed card of one T07, by the card's name. */
export function cautionsByCard(
  job: Readonly<Record<string, string>> = everything,
): Readonly<Record<string, ReadonlySet<string>>> {
  const bench = cardBench(job);
  const care = careDates('2027-04-28', mondayToFriday);
  const cards: Readonly<Record<string, readonly StepCaution[]>> = {
    survey: surveyCard(school).cautions,
    prep: prepRows(demoPlan({ sizes: ['T07'], job }, { handover: '2027-04-28' })).flatMap(({ cautions }) => cautions),
    treatment: steamCautions(),
    build: buildCards(bench, { records, display: plainDisplay, audience: '', animalCrushes: false }).flatMap((card) =>
      card.steps.flatMap(({ cautions }) => cautions),
    ),
    watch: watchCards(bench, plainDisplay).flatMap(({ cautions }) => cautions),
    'animals in': animalsInCard({ build: '2027-04-07', settleInDays: 7, job: school }).cautions,
    handover: handoverCards(bench, {
      job: school,
      handover: '2027-04-28',
      care,
      workshop: workshopOf(records),
      display: plainDisplay,
    }).flatMap(({ cautions }) => cautions),
    care: sizeCare(bench, '2027-04-28', plainDisplay).flatMap(({ cautions }) => cautions),
  };
  return Object.fromEntries(Object.entries(cards).map(([card, of]) => [card, new Set(of.map(({ step }) => step))]));
}

function steamCautions(): readonly StepCaution[] {
  const plan = treatLeaves({ way: 'steam', aim: 'sterile', leavesL: 43.51 }, { altitudeM: 650, pressureKpa: 103.421 });
  if (!plan.ok) throw new Error(plan.fault);
  return treatmentCard('steam', plan.value).cautions;
}

/** Minutes of all work lines of a size, but those named. */
export function workMinutes(bench: Bench, without: readonly string[]): number {
  const work = workAmounts(bench, ['T07']);
  if (!work.ok) throw new Error(work.fault.kind);
  return work.value.filter(({ line }) => !without.includes(line)).reduce((sum, { amount }) => sum + amount, 0);
}
