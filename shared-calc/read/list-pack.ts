import { sameDimension } from '#shared-calc/quantity/dimension.ts';
import type { NumberFault } from '#shared-calc/quantity/read-number.ts';
import { fromBase, toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { readListNumber, type ListDecimal } from './list-figures.ts';
import { unitOfList } from './list-units.ts';

/** A pack as a list has it. */
export interface WrittenPack {
  readonly amount: number;
  /** Left out if the list names none. */
  readonly unit?: string;
  /** Half a step of its last digit, where the amount may be rounded: 45.4 is within 0.05. */
  readonly within: number;
}

export type ListPackFault =
  | { readonly kind: 'pack-empty' }
  | { readonly kind: 'pack-no-amount'; readonly text: string }
  | { readonly kind: 'pack-unknown-unit'; readonly text: string; readonly unit: string }
  | { readonly kind: 'pack-two-units'; readonly text: string; readonly other: string }
  | { readonly kind: 'pack-number'; readonly text: string; readonly fault: NumberFault };

const numberForm = String.raw`\d+ +\d+\/\d+|\d+\/\d+|[.,]?\d[\d.,]*(?:[ '][\d.,]*\d[\d.,]*)*(?:[eE][+-]?\d+)?`;
const form = new RegExp(
  String.raw`^(?:(?<times>${numberForm})\s*[x×*]\s*(?=[\d.,]))?(?<number>${numberForm})?\s*(?<word>[^\d\s-][^\d]*\d?)?$`,
  'i',
);

interface Parts {
  readonly times?: string;
  readonly number?: string;
  readonly word?: string;
}

/**
 * Parses a pack from one cell or two: `12 gal`, `12` and `GAL`, `10 x 1.5 L`, `EA`. A unit alone is one of it. If a pack
 * names its own measure, a unit `each` beside it says how it is sold, and is passed over.
 */
export function readListPack(pack: string, unit: string, decimal: ListDecimal): Result<WrittenPack, ListPackFault> {
  const [own, beside] = [partsOf(pack), partsOf(unit)];
  const text = [pack, unit]
    .map((each) => each.trim())
    .join(' ')
    .trim();
  if (text === '') return failed({ kind: 'pack-empty' });
  if (!own || !beside) return failed({ kind: 'pack-no-amount', text });
  const units = readUnits(own.word, beside.word, text);
  if (!units.ok) return units;
  let amount = 1;
  for (const number of [own.times, own.number, beside.times, beside.number]) {
    const read = number === undefined ? ok(1) : readListNumber(number, decimal);
    if (!read.ok) return failed({ kind: 'pack-number', text, fault: read.fault });
    amount *= read.value;
  }
  if (!(amount > 0)) return failed({ kind: 'pack-no-amount', text });
  return ok({
    amount: cleanNoise(amount),
    ...(units.value !== undefined && { unit: units.value }),
    within: withinOf(own, beside),
  });
}

/** The amount in another unit; `undefined` if it is of another kind. */
export function packIn({ amount, unit }: Pick<WrittenPack, 'amount' | 'unit'>, own: string): number | undefined {
  if (unit === undefined || unit === own) return amount;
  const [from, to] = [unitOf(unit), unitOf(own)];
  return sameDimension(from.dimension, to.dimension) ? cleanNoise(fromBase(toBase(amount, from), to)) : undefined;
}

/** Whether the list's amount is a rounding of one in the unit `own`: 45.4 L is one of 45.424941408 L. */
export function isRounded({ amount, unit, within }: WrittenPack, own: number, ownUnit: string): boolean {
  const there = packIn({ amount: own, unit: ownUnit }, unit ?? ownUnit);
  return there !== undefined && Math.abs(there - amount) <= within;
}

function partsOf(text: string): Parts | undefined {
  const tidy = text.trim().replaceAll(/[\u00a0\u2007\u2009\u202f]/g, ' ');
  return form.exec(tidy)?.groups;
}

function readUnits(
  own: string | undefined,
  beside: string | undefined,
  text: string,
): Result<string | undefined, ListPackFault> {
  const units: string[] = [];
  for (const word of [own, beside]) {
    if (word === undefined) continue;
    const unit = unitOfList(word);
    if (unit === undefined) return failed({ kind: 'pack-unknown-unit', text, unit: word.trim() });
    units.push(unit);
  }
  const measures = units.filter((unit) => unit !== 'each');
  const [only, other] = new Set(measures);
  if (other !== undefined) return failed({ kind: 'pack-two-units', text, other });
  return ok(only ?? units[0]);
}

/** An amount of three digits and more with decimals may be rounded; one of fewer digits says what it says. */
function withinOf(own: Parts, beside: Parts): number {
  const numbers = [own.times, own.number, beside.times, beside.number].filter((each) => each !== undefined);
  const [only = '', ...others] = numbers;
  const [, decimals = ''] = /[.,](\d+)$/.exec(only) ?? [];
  const digits = only.replaceAll(/\D/g, '').replace(/^0+/, '').length;
  return others.length > 0 || decimals === '' || digits < 3 ? 0 : 0.5 / 10 ** decimals.length;
}
