import { readMeasure } from '#shared-calc/read/read-measure.ts';
import { treatLeaves, triedWays, type TreatmentPlace, type TriedWay } from '#shared-calc/prepare/treat-leaves.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { TreatmentAim, TreatmentWay } from '#shared-calc/trade/heat/leaf-treatment.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';

/** A treatment, as typed; an empty vessel means the usual one of the method. */
export interface TreatmentTexts {
  /** Loose leaves; empty means those of the open job. */
  readonly leaves: string;
  readonly aim: TreatmentAim;
  /** 16 h before the treatment. */
  readonly moistened: boolean;
  /** The tray in the oven stands uncovered. */
  readonly open: boolean;
  readonly pot: string;
  readonly potFill: string;
  readonly oven: string;
  readonly ovenFill: string;
  /** The selected method; the suggested one by default. */
  readonly way: TreatmentWay | undefined;
}

export const noTreatment: TreatmentTexts = {
  leaves: '',
  aim: 'clean',
  moistened: false,
  open: false,
  pot: '',
  potFill: '',
  oven: '',
  ovenFill: '',
  way: undefined,
};

export interface TreatmentWish {
  readonly leavesL: number;
  readonly aim: TreatmentAim;
  readonly ways: readonly TriedWay[];
  /** The selected method. */
  readonly chosen: TriedWay;
}

interface Terms {
  readonly place: TreatmentPlace;
  /** Leaves of the open job, loose litres. */
  readonly ofJob: number | undefined;
  readonly decimalComma: boolean;
}

/** All methods for the typed treatment, or a sentence that says what cannot be parsed. */
export function askTreatment(texts: TreatmentTexts, terms: Terms): Result<TreatmentWish, string> {
  const leavesL = readLeaves(texts, terms);
  if (!leavesL.ok) return leavesL;
  const loads = readLoads(texts, terms.decimalComma);
  if (!loads.ok) return loads;
  const { aim, moistened, open } = texts;
  const ways = triedWays(
    (way) =>
      treatLeaves(
        { way, aim, moistened, open, leavesL: leavesL.value, ...loads.value[way === 'bake' ? 'oven' : 'pot'] },
        terms.place,
      ),
    texts,
  );
  const chosen =
    ways.find(({ way, suggested }) => (texts.way === undefined ? suggested : way === texts.way)) ?? ways[0];
  return chosen ? ok({ leavesL: leavesL.value, aim, ways, chosen }) : failed('Choose a way.');
}

function readLeaves({ leaves }: TreatmentTexts, { ofJob, decimalComma }: Terms): Result<number, string> {
  if (leaves.trim() === '') {
    return ofJob === undefined ? failed('Leaves: say how many loose litres, as 43.51 L.') : ok(ofJob);
  }
  const read = said(readMeasure(leaves, { name: 'Leaves', stored: 'L', low: 0.1, high: 10_000 }, { decimalComma }));
  return read.ok ? ok(read.value ?? 0) : read;
}

interface Load {
  readonly vesselL?: number;
  readonly fill?: number;
}

function readLoads(
  texts: TreatmentTexts,
  decimalComma: boolean,
): Result<Readonly<Record<'pot' | 'oven', Load>>, string> {
  const figures: { pot?: number; potFill?: number; oven?: number; ovenFill?: number } = {};
  for (const name of ['pot', 'potFill', 'oven', 'ovenFill'] as const) {
    const measure = name.endsWith('Fill')
      ? { name: fieldNames[name], stored: 'share', shown: '%', low: 0.1, high: 1 }
      : { name: fieldNames[name], stored: 'L', low: 1, high: 1_000 };
    const read = said(readMeasure(texts[name], { ...measure, mayBeEmpty: true }, { decimalComma }));
    if (!read.ok) return read;
    if (read.value !== undefined) figures[name] = read.value;
  }
  return ok({ pot: loadOf(figures.pot, figures.potFill), oven: loadOf(figures.oven, figures.ovenFill) });
}

export const fieldNames = {
  pot: 'Pot or steam vessel',
  potFill: 'Filled to',
  oven: 'Oven',
  ovenFill: 'Oven filled to',
} as const;

function loadOf(vesselL: number | undefined, fill: number | undefined): Load {
  return { ...(vesselL !== undefined && { vesselL }), ...(fill !== undefined && { fill }) };
}
