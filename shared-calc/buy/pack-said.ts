import { packWords } from '#shared-calc/quantity/goods-words.ts';
import { readFigure } from '#shared-calc/quantity/read-figure.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import type { Pack } from '#shared-calc/records/records.ts';

/** What a pack holds. */
export interface PackContent {
  readonly amount: number;
  readonly unit: string;
}

/** What a pack holds as its supplier says it, 12 gal; in the unit of its goods where nothing else is kept of it. */
export function contentOf({ amount, typed }: Pick<Pack, 'amount' | 'typed'>, unit: string): PackContent {
  const own = { amount: cleanNoise(amount), unit };
  const text = typed?.['amount'];
  const read = text === undefined ? undefined : readFigure(text, { unit });
  if (!read?.ok || cleanNoise(fromBase(read.value.value, unitOf(unit))) !== own.amount) return own;
  const said = read.value.unit;
  return { amount: cleanNoise(fromBase(read.value.value, said)), unit: said.symbol };
}

/** The same in words: `12 gal`, `45 L`. */
export function sayPack(pack: Pick<Pack, 'amount' | 'typed'>, unit: string, display: Display): string {
  const content = contentOf(pack, unit);
  return packWords(content.amount, content.unit, display);
}
