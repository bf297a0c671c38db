import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { askTreatment, noTreatment } from '#renderer/places/prepare/treatment-texts.ts';
import { treatCommand } from '#electron/cli/commands/treat.ts';
import { treatmentCard } from '#shared-calc/papers/treatment-card.ts';
import { treatLeaves } from '#shared-calc/prepare/treat-leaves.ts';
import {
  treatmentAims,
  treatmentWays,
  type TreatmentAim,
  type TreatmentWay,
} from '#shared-calc/trade/heat/leaf-treatment.ts';
import type { Result } from '#shared-calc/result.ts';
import { answerOf } from '#tests/electron/cli/run-command.ts';
import { useDemoBook } from '#tests/electron/cli/run-cli.ts';

/* What is cautioned when leaves are treated: every way, for every aim, in every setting, and nothing else. */

/** The ids of the table below. */
const ids: Readonly<Record<string, readonly string[]>> = {
  steam: ['treatingHeat', 'steamVent', 'steamOpening', 'steamVessel', 'steamLoad'],
  boil: ['boilingWater', 'hotDraining'],
  oven: ['ovenAttended', 'ovenMoist'],
  clean: ['cleanIsEnough'],
  promise: ['neverPromise'],
  collected: ['collecting', 'collectedKinds'],
};

const refusals: Readonly<Record<string, string>> = {
  'boil-not': 'Boiling cleans and does not sterilise; only pressure steam does.',
  'bake-not': 'Baking cleans and does not sterilise; only pressure steam does.',
  'too-cool': 'Water boils at 84.94 C here; boiling leaves needs 90 C or more. Bake or steam them.',
  scorch: 'Leaves can scorch or catch fire; 120 C is the limit here.',
  'too-low':
    'The core reaches 109.1 degC; sterile asks for 115 (15 psi at this height gives 118.8; the least here is 11.8 psi).',
  'too-high':
    'The core reaches 112.5 degC; sterile asks for 115 (15 psi at this height gives 112.5; the least here is 17.0 psi).',
  'too-cold': 'The core can never reach 90 C in a medium at 88 C.',
};

interface Setting {
  readonly vesselL?: number;
  readonly fill?: number;
  readonly gaugeKpa?: number;
  readonly altitudeM?: number;
  readonly ovenC?: number;
}

const settings: Readonly<Record<string, Setting>> = {
  'the usual vessel': {},
  'gauge at 50 kPa': { gaugeKpa: 50 },
  'gauge at 120 kPa': { gaugeKpa: 120 },
  'a vessel of 40 L': { vesselL: 40 },
  'two thirds full': { fill: 2 / 3 },
  'filled to 80 %': { fill: 0.8 },
  'both over': { gaugeKpa: 120, fill: 0.8 },
  'at 1,500 m': { altitudeM: 1500 },
  'at 4,500 m': { altitudeM: 4500 },
  'oven at 110 C': { ovenC: 110 },
  'oven at 130 C': { ovenC: 130 },
  'oven at 88 C': { ovenC: 88 },
};

const table = `
setting          | steam, clean          | steam, sterile          | boil, clean          | boil, sterile | bake, clean          | bake, sterile
the usual vessel | steam clean collected | steam promise collected | boil clean collected | boil-not      | oven clean collected | bake-not
gauge at 50 kPa  | steam clean collected | too-low                 | boil clean collected | boil-not      | oven clean collected | bake-not
gauge at 120 kPa | steam clean collected | steam promise collected | boil clean collected | boil-not      | oven clean collected | bake-not
a vessel of 40 L | steam clean collected | steam promise collected | boil clean collected | boil-not      | oven clean collected | bake-not
two thirds full  | steam clean collected | steam promise collected | boil clean collected | boil-not      | oven clean collected | bake-not
filled to 80 %   | steam clean collected | steam promise collected | boil clean collected | boil-not      | oven clean collected | bake-not
both over        | steam clean collected | steam promise collected | boil clean collected | boil-not      | oven clean collected | bake-not
at 1,500 m       | steam clean collected | steam promise collected | boil clean collected | boil-not      | oven clean collected | bake-not
at 4,500 m       | steam clean collected | too-high                | too-cool             | boil-not      | oven clean collected | bake-not
oven at 110 C    | steam clean collected | steam promise collected | boil clean collected | boil-not      | oven clean collected | bake-not
oven at 130 C    | steam clean collected | steam promise collected | boil clean collected | boil-not      | scorch               | bake-not
oven at 88 C     | steam clean collected | steam promise collected | boil clean collected | boil-not      | too-cold             | bake-not
`;

interface Case {
  readonly setting: string;
  readonly way: TreatmentWay;
  readonly aim: TreatmentAim;
  readonly words: readonly string[];
}

const cases = readCases(table);
const Cautions = z
  .array(z.strictObject({ id: z.string(), says: z.string(), decides: z.string(), source: z.string() }))
  .transform((cautions) => cautions.map(({ id }) => id));
const { book } = useDemoBook('2027-03-08');

describe('cautions of treated leaves', () => {
  test('the table has every setting, way and aim', () => {
    const all = Object.keys(settings).flatMap((setting) =>
      treatmentWays.flatMap((way) => treatmentAims.map((aim) => ({ setting, way, aim }))),
    );
    expect(cases.map(({ setting, way, aim }) => ({ setting, way, aim }))).toEqual(all);
  });

  test.each(cases)('$setting, $way, aim $aim: in the plan and on the command line', async (each) => {
    const wanted = each.words.flatMap((word) => ids[word] ?? [refusals[word] ?? word]);
    expect(inPlan(each)).toEqual(wanted);
    expect(await onCommandLine(each)).toEqual(wanted);
  });

  test('all ways side by side have each their own', async () => {
    const Ways = z.object({ ways: z.record(z.string(), z.object({ cautions: Cautions.optional() })) });
    const answer = await answerOf(treatCommand, '--book', book(), '--leaves', '10 L', '--aim', 'clean');
    const { ways } = Ways.parse(answer);
    expect(Object.entries(ways).map(([way, { cautions }]) => [way, cautions])).toEqual(
      cases
        .filter(({ setting, aim }) => setting === 'the usual vessel' && aim === 'clean')
        .map(({ way, words }) => [way, words.flatMap((word) => ids[word] ?? [])]),
    );
  });

  test.each(cases.filter(({ setting }) => setting === 'the usual vessel' || setting === 'filled to 80 %'))(
    '$setting, $way, aim $aim: on the page',
    ({ setting, way, aim, words }) => {
      const fill = settings[setting]?.fill === undefined ? '' : '80';
      const texts = { ...noTreatment, leaves: '10 L', aim, way, potFill: fill, ovenFill: fill };
      const place = { altitudeM: 650, pressureKpa: 103.421 };
      const treatment = askTreatment(texts, { place, ofJob: undefined, decimalComma: false });
      const plan = treatment.ok ? treatment.value.chosen.plan : treatment;
      expect(saidOf(plan)).toEqual(words.flatMap((word) => ids[word] ?? [refusals[word] ?? word]));
    },
  );
});

describe('the card of treated leaves', () => {
  test.each(cases.filter(({ words }) => words.includes('collected')))('$setting, $way, aim $aim', (each) => {
    const plan = planOf(each);
    if (!plan.ok) throw new Error(plan.fault);
    expect(treatmentCard(each.way, plan.value).cautions).toEqual(plan.value.cautions);
  });
});

function readCases(text: string): readonly Case[] {
  const [heads = [], ...rows] = text.trim().split('\n').map(cellsOf);
  return rows.flatMap(([setting = '', ...cells]) =>
    cells.map((cell, at) => {
      const [way, aim] = (heads[at + 1] ?? '').split(', ');
      return { setting, way: oneOf(treatmentWays, way), aim: oneOf(treatmentAims, aim), words: cell.split(' ') };
    }),
  );
}

function cellsOf(row: string): readonly string[] {
  return row.split('|').map((cell) => cell.trim());
}

function oneOf<T extends string>(words: readonly T[], wanted: string | undefined): T {
  const found = words.find((word) => word === wanted);
  if (found === undefined) throw new Error(`no ${wanted}`);
  return found;
}

function planOf({ setting, way, aim }: Case) {
  const { gaugeKpa = 103.421, altitudeM = 650, ...vessel } = settings[setting] ?? {};
  return treatLeaves({ way, aim, leavesL: 10, ...vessel }, { altitudeM, pressureKpa: gaugeKpa });
}

function inPlan(each: Case): readonly string[] {
  return saidOf(planOf(each));
}

interface Cautioned {
  readonly cautions: readonly { readonly id: string | null }[];
}

function saidOf(plan: Result<Cautioned, string>): readonly string[] {
  if (!plan.ok) return [plan.fault];
  return plan.value.cautions.map(({ id }) => id ?? '');
}

const options = { vesselL: 'vessel', fill: 'fill', gaugeKpa: 'gauge', altitudeM: 'altitude', ovenC: 'oven' } as const;
const Answer = z.union([
  z.object({ cautions: Cautions }).transform(({ cautions }) => cautions),
  z.object({ says: z.array(z.string()) }).transform(({ says: refused }) => refused),
]);

async function onCommandLine({ setting, way, aim }: Case): Promise<readonly string[]> {
  const given = Object.entries(settings[setting] ?? {}).flatMap(([name, figure]) => [
    `--${options[name as keyof Setting]}`,
    String(figure),
  ]);
  const argv = ['--book', book(), '--leaves', '10 L', '--way', way, '--aim', aim, ...given];
  return Answer.parse(await answerOf(treatCommand, ...argv));
}
