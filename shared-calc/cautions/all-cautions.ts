import { keysOf } from '#shared-calc/fields/keys-of.ts';
import type { UseName } from '#shared-calc/fields/uses.ts';
import type { CautionEntry, CautionFigure } from './caution.ts';
import { figureCautions } from './figure-cautions.ts';
import { heatCautions } from './heat-cautions.ts';
import { peopleCautions } from './people-cautions.ts';
import type { CautionSource } from './sources.ts';
import { surveyCautions } from './survey-cautions.ts';
import { workCautions } from './work-cautions.ts';

const table = { ...peopleCautions, ...workCautions, ...figureCautions, ...heatCautions, ...surveyCautions };

export type CautionId = keyof typeof table;

export const cautionIds = keysOf(table);

/** The entry of a caution with its open fields. */
export function cautionEntry(id: CautionId): CautionEntry {
  return table[id];
}

/** The cautions that are beside the figure of this use. */
export function cautionsBeside(use: UseName): readonly CautionId[] {
  return cautionIds.filter((id) => cautionEntry(id).uses?.includes(use));
}

/** A caution as an answer carries it, its figures filled in. */
export interface SaidCaution {
  /** `null` for what a house has written on a line itself. */
  readonly id: CautionId | null;
  readonly about: string;
  readonly says: string;
  readonly decides: string;
  /** The citation, or the mark that there is none. */
  readonly source: string;
  /** Address of a publication. */
  readonly at?: string;
}

/** The words of a figure; `undefined` if it is not known yet. */
export type FillFigure = (figure: CautionFigure) => string | undefined;

/** A caution in words: with the figures of a tank where there is one. A figure that is not known yet is said to be so. */
export function sayCaution(id: CautionId, fill?: FillFigure): SaidCaution {
  const { about, says, anyTank = says, decides, source } = cautionEntry(id);
  const words = fill ? filled(unmarked(says), fill) : unmarked(anyTank);
  return { id, about, says: words, decides, ...sourceOf(source) };
}

/** The caution that is worded so where no tank is at hand. */
export function cautionSaid(words: string): SaidCaution | undefined {
  return cautionIds.map((id) => sayCaution(id)).find(({ says }) => says === words);
}

/** The cautions of several acts, each wording once. */
export function eachOnce(cautions: readonly SaidCaution[]): readonly SaidCaution[] {
  return [...new Map(cautions.map((each) => [each.says, each])).values()];
}

function unmarked(says: string): string {
  return says.replaceAll(/[[\]]/g, '');
}

function filled(says: string, fill: FillFigure): string {
  return says.replaceAll(/\{(\w+)\}/g, (_, name: CautionFigure) => fill(name) ?? '(not known yet)');
}

function sourceOf(source: CautionSource): Pick<SaidCaution, 'source' | 'at'> {
  return typeof source === 'string' ? { source } : { source: source.says, at: source.at };
}
