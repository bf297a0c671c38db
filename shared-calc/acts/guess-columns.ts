import type { ListColumn, PriceListMap } from '#shared-calc/fields/price-list-map.ts';
import { readListDay } from '#shared-calc/read/list-days.ts';
import { decimalOf } from '#shared-calc/read/list-figures.ts';
import { isCurrencyCode, takeMoneyApart } from '#shared-calc/read/list-money.ts';
import { readListPack } from '#shared-calc/read/list-pack.ts';
import { readSheet, type ListSheet } from '#shared-calc/read/list-sheet.ts';
import { unitOfList } from '#shared-calc/read/list-units.ts';
import { columnAt, usualColumns, knownHeadings, type ColumnNames } from './price-list-columns.ts';

/** Rows that are looked at. */
const SAMPLE = 200;
/** The share of a column's cells that must be what the column is taken for. */
const MOST = 0.6;

interface Candidate {
  readonly at: number;
  /** Without empty ones. */
  readonly cells: readonly string[];
  /** The share of rows that have a cell here. */
  readonly filled: number;
}

/**
 * The columns of a list that neither a map, nor the last list, nor the program's own headings name, by what stands in
 * their cells and never by what they are called. A proposal for a person to look at: no command takes a list by it.
 */
export function guessColumns(text: string, names: ColumnNames, ownCodes: (code: string) => boolean): PriceListMap {
  const sheet = readSheet(text, knownHeadings(names));
  if (!sheet.ok) return {};
  const known = usualColumns(sheet.value.heading, names);
  const taken = new Set(Object.values(known));
  const found: Partial<Record<ListColumn, string>> = {};
  const all = candidatesOf(sheet.value);
  const free = () => all.filter(({ at }) => !taken.has(at));
  for (const [column, find] of finders(ownCodes)) {
    const its = known[column] === undefined ? find(free(), all) : undefined;
    if (!its) continue;
    taken.add(its.at);
    found[column] = nameOf(its.at, sheet.value.heading);
  }
  return Object.keys(found).length === 0 ? {} : { columns: found };
}

type Find = (free: readonly Candidate[], all: readonly Candidate[]) => Candidate | undefined;

/** In the order in which they are told apart most surely. */
function finders(ownCodes: (code: string) => boolean): readonly (readonly [ListColumn, Find])[] {
  return [
    ['from', best(isDay)],
    ['price', best(moneyWeight, MOST * PLAIN)],
    ['unit', best(isUnit)],
    ['pack', findPack],
    ['material', best((cell) => Number(ownCodes(cell)))],
    ['article', findArticle],
    ['label', findLabel],
  ];
}

function best(weightOf: (cell: string) => number, least = MOST): Find {
  return (free) => {
    const weighed = free.map((each) => ({ each, weight: mean(each.cells.map(weightOf)) }));
    const [first] = weighed.toSorted((one, other) => rankOf(other) - rankOf(one));
    return first && first.weight >= least ? first.each : undefined;
  };
}

/** Of two columns alike the fuller one, then the first. */
function rankOf({ each, weight }: { readonly each: Candidate; readonly weight: number }): number {
  return each.filled * weight;
}

const orders = ['ymd', 'dmy', 'mdy'] as const;

function isDay(cell: string): number {
  const days = orders.map((order) => readListDay(cell, '', order));
  return Number(days.some((day) => day.ok && day.value.startsWith('20')));
}

/** A whole number may be a price; one with decimals or a currency rather is. */
const PLAIN = 0.4;

function moneyWeight(cell: string): number {
  const money = takeMoneyApart(cell);
  if (!money || isDay(cell) === 1) return 0;
  const { mark, number } = money;
  if (/\p{Sc}$/u.test(mark) || isCurrencyCode(mark)) return 1;
  if (/[.,]\d{2}$/.test(number)) return unitOfList(mark) === undefined ? 0.9 : 0;
  return mark === '' && !/^0\d/.test(number) ? PLAIN : 0;
}

function isUnit(cell: string): number {
  return Number(!/\d/.test(cell) && unitOfList(cell) !== undefined);
}

/** Amounts with their unit, else the figures beside a column of units. */
const findPack: Find = (free, all) => {
  const whole = best((cell) => Number(packUnit(cell) !== undefined))(free, all);
  if (whole) return whole;
  const unit = best(isUnit)(all, all);
  const beside = unit && free.filter(({ at }) => Math.abs(at - unit.at) === 1);
  return beside && best((cell) => Number(/^[\d.,]+$/.test(cell)))(beside, all);
};

function packUnit(cell: string): string | undefined {
  const decimal = { sign: decimalOf([cell]) ?? '.', isKnown: true } as const;
  const pack = readListPack(cell, '', decimal);
  return /\d/.test(cell) && pack.ok ? pack.value.unit : undefined;
}

/** Codes: with a figure or in one word, nearly all of them different. */
const findArticle: Find = (free) => {
  const isCode = (cell: string) => cell.length <= 24 && (/\d/.test(cell) || !/\s/.test(cell));
  return free.find(
    ({ cells, filled }) =>
      filled >= MOST && new Set(cells).size >= cells.length * 0.9 && mean(cells.map((c) => Number(isCode(c)))) >= 0.9,
  );
};

/** The most letters. */
const findLabel: Find = (free) => {
  const ranked = free.map((each) => ({
    each,
    letters: each.filled * mean(each.cells.map((cell) => cell.match(/\p{L}/gu)?.length ?? 0)),
  }));
  const [first] = ranked.toSorted((one, other) => other.letters - one.letters);
  return first && first.letters > 3 ? first.each : undefined;
};

function candidatesOf({ heading, rows }: ListSheet): readonly Candidate[] {
  const sample = rows.slice(0, SAMPLE);
  return heading.map((_, at) => {
    const cells = sample.flatMap((row) => (row.cells[at] ? [row.cells[at]] : []));
    return { at, cells, filled: cells.length / sample.length };
  });
}

function mean(weights: readonly number[]): number {
  return weights.length === 0 ? 0 : weights.reduce((sum, weight) => sum + weight, 0) / weights.length;
}

/** By its heading, where no other column bears the same; a heading that is an amount of money is none. */
function nameOf(at: number, headings: readonly string[]): string {
  const heading = headings[at] ?? '';
  const isAlone = headings.filter((each) => each.toLowerCase() === heading.toLowerCase()).length === 1;
  return heading !== '' && isAlone && !headings.some((each) => moneyWeight(each) >= 0.9) ? heading : columnAt(at);
}
