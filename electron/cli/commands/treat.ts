import { sayAllFigures } from '#shared-calc/quantity/said-figures.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { sameDimension } from '#shared-calc/quantity/dimension.ts';
import type { ReadOptions } from '#shared-calc/quantity/figure-reading.ts';
import { readFigure } from '#shared-calc/quantity/read-figure.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { cleanNoise, writeNumber } from '#shared-calc/quantity/write-figure.ts';
import {
  treatLeaves,
  waysSideBySide,
  type LeavesToTreat,
  type TreatmentPlace,
} from '#shared-calc/prepare/treat-leaves.ts';
import type { Workshop } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { didYouMean } from '#shared-calc/rule/did-you-mean.ts';
import { keysOf } from '#shared-calc/fields/keys-of.ts';
import type { TreatmentPlan } from '#shared-calc/trade/heat/leaf-treat-time.ts';
import { treatmentAims, treatmentWays } from '#shared-calc/trade/heat/leaf-treatment.ts';
import type { Command } from '#electron/cli/command.ts';
import { refusal, type Outcome } from '#electron/cli/outcome.ts';
import type { Arguments } from '#electron/cli/read-arguments.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';
import { cautionJson, underFigures } from '#electron/cli/cautions-answer.ts';

/** How leaves are treated here: one method, or all of them side by side by default. */
export const treatCommand: Command = {
  name: 'treat',
  usage:
    'treat --leaves "43.51 L" --aim clean|sterile [--way steam|boil|bake] [--vessel "21 L"] [--fill 0.6] [--altitude "650 m"] [--gauge "15 psi"] [--water "3 L"] [--power "1.5 kW"] [--oven "105 degC"] [--moistened] [--open]: leaf treatment',
  options: {
    ...bookOption,
    leaves: 'text',
    way: 'text',
    aim: 'text',
    vessel: 'text',
    fill: 'text',
    altitude: 'text',
    gauge: 'text',
    oven: 'text',
    water: 'text',
    power: 'text',
    moistened: 'flag',
    open: 'flag',
  },
  misuse,
  run: (given) =>
    withBook(given, (book) => {
      const workshop = workshopOf(book.records());
      const request = readRequest(given, workshop);
      if (!request.ok) return refusal(request.fault);
      if (request.value.leaves.leavesL === 0) return refusal('There is nothing to treat.');
      return given.text('way') === undefined
        ? sideBySide(given, request.value)
        : oneWay(request.value, displayOf(workshop));
    }),
};

function misuse(given: Arguments): string | undefined {
  const [word] = given.words;
  if (word !== undefined) return `What is ${word} for? Leaves are given as --leaves "43.51 L".`;
  if (given.text('leaves') === undefined) return 'Say how much to treat: --leaves "43.51 L".';
  if (given.text('aim') === undefined) return 'Say what for: --aim clean, or --aim sterile.';
  return vesselMisuse(given) ?? notOneOf('aim', given, treatmentAims) ?? notOneOf('way', given, treatmentWays);
}

function vesselMisuse(given: Arguments): string | undefined {
  const has = (name: string) => given.text(name) !== undefined;
  const way = given.text('way');
  if (way === undefined && ['vessel', 'fill', 'water', 'power'].some(has)) {
    return 'A vessel belongs to a way: give --way steam, boil or bake with it.';
  }
  if (has('water') && way !== 'steam') return '--water is of the steam vessel.';
  return has('power') && way === 'boil' ? '--power is of the steam vessel or oven.' : undefined;
}

function notOneOf(name: string, given: Arguments, words: readonly string[]): string | undefined {
  const word = given.text(name);
  if (word === undefined || words.includes(word)) return undefined;
  return `--${name} ${word}: choose ${words.join(' or ')}.${didYouMean(word, words)}`;
}

interface TreatRequest {
  readonly leaves: LeavesToTreat;
  readonly place: TreatmentPlace;
}

const figureUnits = {
  leaves: 'L',
  vessel: 'L',
  fill: 'share',
  altitude: 'm',
  gauge: 'kPa',
  oven: 'degC',
  water: 'L',
  power: 'W',
} as const;
type FigureName = keyof typeof figureUnits;

type Figures = Partial<Record<FigureName, number>>;

function readFigures(given: Arguments, decimalComma: boolean): Result<Figures, string> {
  const figures: Figures = {};
  for (const name of keysOf(figureUnits)) {
    const figure = readOption(given, name, { unit: figureUnits[name], decimalComma });
    if (!figure.ok) return figure;
    if (figure.value !== undefined) figures[name] = figure.value;
  }
  return ok(figures);
}

function readRequest(given: Arguments, place: Workshop): Result<TreatRequest, string> {
  const figures = readFigures(given, place.decimalComma);
  if (!figures.ok) return figures;
  const { leaves = 0, vessel, fill, oven } = figures.value;
  return ok({
    leaves: {
      way: treatmentWays.find((way) => way === given.text('way')) ?? 'steam',
      aim: given.text('aim') === 'sterile' ? 'sterile' : 'clean',
      leavesL: leaves,
      moistened: given.flag('moistened'),
      open: given.flag('open'),
      ...(vessel !== undefined && { vesselL: vessel }),
      ...(fill !== undefined && { fill }),
      ...(oven !== undefined && { ovenC: oven }),
    },
    place: placeOf(figures.value, place, given.text('way') === 'bake'),
  });
}

/** The workshop's place, with what is given here; the power given is that of the way. */
function placeOf({ altitude, gauge, water, power }: Figures, place: TreatmentPlace, inOven: boolean): TreatmentPlace {
  const ofWay = inOven ? { ovenPowerW: power } : { steamPowerKw: power === undefined ? undefined : power / 1000 };
  const given = { altitudeM: altitude, pressureKpa: gauge, steamWaterL: water, ...ofWay };
  return { ...place, ...Object.fromEntries(Object.entries(given).filter(([, figure]) => figure !== undefined)) };
}

/** A figure in a unit; a bare number has this unit. `undefined` if the option is absent. */
function readOption(given: Arguments, name: string, options: ReadOptions): Result<number | undefined, string> {
  const { unit } = options;
  const text = given.text(name);
  if (text === undefined) return ok(undefined);
  const figure = readFigure(text, options);
  const wanted = unitOf(unit);
  if (figure.ok && sameDimension(figure.value.unit.dimension, wanted.dimension)) {
    return ok(cleanNoise(fromBase(figure.value.value, wanted)));
  }
  return failed(`--${name} ${text}: give ${unit === 'share' ? 'a share, as 0.6 or 60 %' : `it in ${unit}`}.`);
}

function oneWay({ leaves, place }: TreatRequest, display: Display): Outcome {
  const plan = treatLeaves(leaves, place);
  if (!plan.ok) return refusal(plan.fault);
  return {
    is: 'answer',
    json: treatmentJson(plan.value),
    table: () =>
      [planTable(plan.value, display), ...underFigures(plan.value.warnings, plan.value.cautions, display)].join('\n'),
  };
}

function sideBySide(given: Arguments, { leaves, place }: TreatRequest): Outcome {
  const { way: _, ...same } = leaves;
  const ways = waysSideBySide({ ...same, moistened: given.flag('moistened') }, place);
  const rows = ways.map(({ way, plan, suggested }) => [
    way,
    ...(plan.ok ? shortRow(plan.value) : ['', '', '']),
    suggested ? 'suggested' : '',
    plan.ok ? '' : plan.fault,
  ]);
  return {
    is: 'answer',
    json: {
      suggested: ways.find(({ suggested }) => suggested)?.way ?? null,
      ways: Object.fromEntries(
        ways.map(({ way, plan }) => [way, plan.ok ? treatmentJson(plan.value) : { refused: plan.fault }]),
      ),
    },
    table: () => textTable(['way', 'batches', 'min', 'attended', '', ''], rows, [1, 2, 3]),
  };
}

function shortRow({ batches, minutes, attended }: TreatmentPlan): readonly string[] {
  return [String(batches), String(minutes), String(attended)];
}

function treatmentJson(plan: TreatmentPlan): Record<string, unknown> {
  const { batches, comeUp, hold, minutes, attended, temperature, warnings, cautions } = plan;
  return {
    batches,
    comeUp,
    hold,
    minutes,
    attended,
    temperature: cleanNoise(temperature),
    warnings,
    cautions: cautions.map(cautionJson),
  };
}

function planTable(plan: TreatmentPlan, display: Display): string {
  const rows = [
    ...plan.steps.map(({ name, minutes }) => [name, `${minutes} min`]),
    ['a batch', `${plan.batchMinutes} min`],
    ['batches', String(plan.batches)],
    ['by the clock', `${plan.minutes} min`],
    ['attended', `${plan.attended} min`],
    ['temperature', sayAllFigures(`${writeNumber(plan.temperature, 2)} degC`, display)],
    ['by', sayAllFigures(plan.reference, display)],
  ];
  return textTable(['', ''], rows, []);
}
