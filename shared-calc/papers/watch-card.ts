import { calledOf } from '#shared-calc/recipe/column.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { addDays } from '#shared-calc/calendar/day.ts';
import { siteActs } from '#shared-calc/cautions/acts.ts';
import type { SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import { animalsInPlan, FULL_WATCH, LEAST_WATCH, type WatchBand } from '#shared-calc/prepare/watch.ts';
import { givenWords } from '#shared-calc/prepare/given-words.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { NO_KIND, sayAnimals } from '#shared-calc/jobs/animal-checks.ts';
import { heatWords } from '#shared-calc/prepare/heat-words.ts';
import { harmOf, peopleNear, protectedKinds } from './audience-rules.ts';
import { cautionsFor, cautionsOf } from '#shared-calc/prepare/act-cautions.ts';
import { sizeFigures } from '#shared-calc/prepare/size-figures.ts';
import { bandAssumed, watchBand } from '#shared-calc/prepare/watch-band.ts';

/** Readings to take with the lamps on before animals go in, for one size. */
export interface WatchCard {
  readonly size: string;
  readonly called: string;
  readonly tank: string;
  readonly band: WatchBand;
  /** The band's temperatures in the workshop's unit: `18 °C`. */
  readonly coldest: string;
  readonly hottest: string;
  /** Hours from the start for each reading: day 1 often, then morning, noon and night. */
  readonly hours: readonly number[];
  readonly leastHours: number;
  /** The expected effect of lamps and room, and the limits of that figure. */
  readonly expected: readonly string[];
  readonly cautions: readonly SaidCaution[];
}

const readAt = [0, 3, 6, 9, 12, 18, 24, 30, 36, 42, 48, 54, 60, 66, FULL_WATCH] as const;

export function watchCards(bench: Bench, display: Display): readonly WatchCard[] {
  return bench.input().columns.map(({ key, label, tank }) => {
    const figures = sizeFigures(bench, key, display);
    const band = watchBand(figures);
    return {
      size: key,
      called: calledOf({ key, label }),
      tank: tank.label,
      band,
      coldest: givenWords(band.lowestC, 'degC', display),
      hottest: givenWords(band.highestC, 'degC', display),
      hours: readAt,
      leastHours: LEAST_WATCH,
      expected: [
        `On the hottest day the recipe expects ${figures.words('hottestDay')} in the tank.`,
        ...bandAssumed(figures, display),
        ...(figures.animals.kind || figures.animals.count === 0 ? [] : [NO_KIND]),
      ],
      cautions: cautionsFor(siteActs.watch, figures),
    };
  });
}

/** What a size is for, and from which temperature on its people act. */
export interface AnimalsInSize {
  readonly called: string;
  readonly animals: string;
  readonly above: string;
  readonly emergency: string;
}

/** When animals go in, and on which days somebody looks at them. */
export interface AnimalsInCard {
  readonly animals: string;
  /** The kind of each size, and from when its people act. */
  readonly sizes: readonly AnimalsInSize[];
  readonly build: Day;
  readonly animalsIn: Day;
  readonly settleInDays: number;
  /** Days counted from the day they go in; empty if the settle-in is long enough. */
  readonly looks: readonly { readonly day: number; readonly date: Day }[];
  /** What to look at on each of those days. */
  readonly lookFor: readonly string[];
  readonly before: readonly string[];
  readonly audience: readonly SaidCaution[];
  readonly protection: readonly SaidCaution[];
  readonly cautions: readonly SaidCaution[];
}

export interface AnimalsInTerms {
  readonly build: Day;
  readonly settleInDays: number;
  readonly job: Pick<Job, 'animals' | 'survey'>;
  readonly bench: Bench;
  readonly display: Display;
}

export function animalsInCard({ build, settleInDays, job, bench, display }: AnimalsInTerms): AnimalsInCard {
  const sizes = bench
    .input()
    .columns.map((column) => ({ called: calledOf(column), figures: sizeFigures(bench, column.key, display) }));
  const animals = sizes.map(({ figures }) => figures.animals);
  return {
    animals: job.animals,
    sizes: sizes
      .filter(({ figures }) => figures.animals.count !== 0)
      .map(({ called, figures }) => ({ called, animals: sayAnimals(figures.animals), ...heatWords(figures) })),
    build,
    animalsIn: addDays(build, settleInDays),
    settleInDays,
    looks: animalsInPlan(build, settleInDays),
    lookFor: ['eating', 'droppings', 'skin', 'hottest and coldest', 'humidity', 'water clear'],
    before: [
      'Maximum and minimum written down for 24 to 72 h, within the band.',
      'Springtails seen at the surface, food here for two weeks.',
      'Every opening screened; doors close and lock.',
      'Quarantine over, its papers here.',
    ],
    audience: [...peopleNear(job), ...harmOf(animals)],
    protection: protectedKinds(animals),
    cautions: cautionsOf(siteActs.animalsIn),
  };
}
