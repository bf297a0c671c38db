import type { PriceBook } from '#shared-calc/buy/price-book.ts';
import { calledOf } from '#shared-calc/recipe/column.ts';
import { needPlace } from '#shared-calc/recipe/lines-by-use.ts';
import { capital } from '#shared-calc/rule/capital.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { buildActs } from '#shared-calc/cautions/acts.ts';
import type { SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import { choosePlants, pricedPlants } from '#shared-calc/jobs/choose-plants.ts';
import { surveyCautions } from '#shared-calc/jobs/survey-cautions.ts';
import { plantNeeds, plantPlace } from '#shared-calc/jobs/plant-place.ts';
import type { Survey } from '#shared-calc/fields/survey.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import type { Line, Records } from '#shared-calc/records/records.ts';
import { countUp } from '#shared-calc/trade/count-up.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import { buildSteps, type BuildStepPlan, type StepSentence } from './build-steps.ts';
import { cautionsFor } from '#shared-calc/prepare/act-cautions.ts';
import { fillWords, notGiven, sizeFigures, type SizeFigures } from '#shared-calc/prepare/size-figures.ts';

/** Goods for a step, to tick off. */
export interface CardGoods {
  readonly line: string;
  readonly label: string;
  /** The words on the bag; empty if nothing is bought. */
  readonly material: string;
  /** For one build. */
  readonly amount: string;
}

export interface CardStep {
  readonly title: string;
  readonly goods: readonly CardGoods[];
  readonly says: readonly string[];
  /** Attended minutes of one build; left out if not known. */
  readonly minutes?: number;
  readonly cautions: readonly SaidCaution[];
}

/** One size of a job, built in this order. */
export interface BuildCard {
  readonly size: string;
  readonly called: string;
  readonly tank: string;
  readonly builds: number;
  /** The recipe that it is built by, where it is not that of the job. */
  readonly recipe?: string;
  /** How many people lift it, and where to build it. */
  readonly lifting: readonly string[];
  /** What the survey found to mind where it is to stand. */
  readonly place: readonly SaidCaution[];
  readonly steps: readonly CardStep[];
  readonly minutes: number;
}

export interface CardTerms {
  readonly records: Pick<Records, 'material' | 'plant'>;
  readonly prices: PriceBook;
  readonly display: Display;
  /** Who comes near the tank and what its animals do; these decide the plants. */
  readonly survey: Survey;
}

/** A build card for every size of a bench. */
export function buildCards(bench: Bench, terms: CardTerms): readonly BuildCard[] {
  return bench.input().columns.map(({ key, label, tank, count, recipe }) => {
    const figures = sizeFigures(bench, key, terms.display);
    const steps = stepsOf({ bench, column: key, tank: tank.label, figures, terms });
    return {
      size: key,
      called: calledOf({ key, label }),
      tank: tank.label,
      builds: count,
      ...(recipe !== undefined && { recipe }),
      lifting: liftWords(figures),
      place: surveyCautions(terms.survey),
      steps,
      minutes: steps.reduce((sum, { minutes = 0 }) => sum + minutes, 0),
    };
  });
}

interface CardSize {
  readonly bench: Bench;
  readonly column: string;
  readonly tank: string;
  readonly terms: CardTerms;
  readonly figures: SizeFigures;
}

const besides: BuildStepPlan = { title: 'Besides', tasks: [], says: [], act: 'besides' };
/** Tasks that are done before the build. */
const overTasks: readonly string[] = ['J1', 'J2'];

function stepsOf(size: CardSize): readonly CardStep[] {
  const lines = size.bench.lines(size.column);
  const needs = Map.groupBy(
    lines.filter((line) => line.role === 'need' && size.figures.needs(line)),
    (line) => stepOfNeed(line, lines),
  );
  const work = Map.groupBy(
    lines.filter((line) => line.role === 'work' && !overTasks.includes(line.task ?? '')),
    ({ task = '' }) => buildSteps.find((step) => step.tasks.includes(task)) ?? besides,
  );
  return [...buildSteps, besides].flatMap((plan) => {
    const goods = (needs.get(plan) ?? []).map((line) => goodsOf(line, size));
    const minutes = minutesOf(work.get(plan) ?? [], size);
    if (goods.length === 0 && minutes === 0) return [];
    return [
      {
        title: plan.title,
        goods,
        says: [
          ...plan.says.flatMap((sentence) => sayStep(sentence, size.figures) ?? []),
          ...(plan.groups?.includes('plants') ? sayPlants(size) : []),
        ],
        ...(minutes !== undefined && { minutes }),
        cautions: cautionsFor(buildActs[plan.act], size.figures),
      },
    ];
  });
}

/** By its place, otherwise by its quote group. */
function stepOfNeed(line: Line, lines: readonly Line[]): BuildStepPlan {
  const { group = '' } = line;
  const place = needPlace(lines, line);
  const placed = place && buildSteps.find((step) => step.place === place);
  return placed ?? buildSteps.find((step) => step.groups?.includes(group)) ?? besides;
}

function goodsOf(line: Line, { figures, tank, terms }: CardSize): CardGoods {
  const material = line.material === 'TANK' ? tank : (terms.records.material.get(line.material ?? '')?.label ?? '');
  return { line: line.name, label: lineLabel(line), material, amount: figures.wordsOf(line) };
}

/** By class, as chosen for this place: `Ground: 4 Fittonia albivenis`. */
function sayPlants({ bench, column, terms }: CardSize): readonly string[] {
  const place = plantPlace(bench, column, terms);
  return choosePlants(pricedPlants(terms.records, terms.prices), plantNeeds(bench, column), place).map(
    ({ class: of, chosen, short }) => {
      const named = chosen.map(({ plant, count, shade }) => `${count} ${plant.name}${shade ? ' (in shade)' : ''}`);
      const all = [...named, ...(short > 0 ? [`${short} of a kind still to be chosen`] : [])];
      return `${capital(of)}: ${all.join(', ')}.`;
    },
  );
}

/** `undefined` if one of the lines has no figure yet. */
function minutesOf(lines: readonly Line[], { bench, column }: CardSize): number | undefined {
  let minutes = 0;
  for (const { name } of lines) {
    const { value } = bench.box(column, name);
    if (typeof value !== 'number') return undefined;
    minutes += fromBase(value, unitOf('min'));
  }
  return minutes;
}

function sayStep(sentence: StepSentence, figures: SizeFigures): string | undefined {
  if (typeof sentence === 'string') return fillWords(sentence, figures);
  return figures.holds(sentence.when) ? fillWords(sentence.says, figures) : undefined;
}

/** Above the crew's limit the recipe's line gives 0, and the card names no number of people. */
function liftWords(figures: SizeFigures): readonly string[] {
  const empty = figures.number('crewEmpty', 'each');
  const filled = figures.number('crewFilled', 'each');
  const lacking = (['crewEmpty', 'crewFilled'] as const).filter(figures.lacks);
  return [
    ...lacking.map((use) => `${capital(notGiven(use))}.`),
    ...(empty === undefined
      ? []
      : [empty === 0 ? 'Too heavy for four people even empty: trolley or machine.' : `Empty: ${people(empty)}.`]),
    ...(filled === undefined
      ? []
      : [filled === 0 ? 'Filled: do not lift, build in place.' : `Filled: ${people(filled)}.`]),
  ];
}

function people(count: number): string {
  const whole = countUp(count);
  return whole === 1 ? 'one person lifts it' : `${whole} people lift it`;
}
