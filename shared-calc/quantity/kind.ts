import { dimension, isPlain, sameDimension, sayDimension, type Dimension } from './dimension.ts';
import { unitOf, unitsLike, type Unit } from './unit.ts';

/** What a figure is: its dimension, and a sort where the dimension alone is ambiguous. */
export type FigureKind = {
  readonly is: 'figure';
  readonly dimension: Dimension;
  /** `reading` is an absolute temperature; `count`, `share` and `number` have no dimension. */
  readonly sort: 'reading' | 'count' | 'share' | 'number';
};

/** The kind of a cell or of a part of a rule. `options` are the words of a choice, if known. */
export type Kind =
  | FigureKind
  | { readonly is: 'choice'; readonly options?: readonly string[] }
  | { readonly is: 'yes_no' };

export const YES_NO: Kind = { is: 'yes_no' };

/** The kind of a unit (or of the words `choice`, `yes_no`): `K` is a temperature step, `degC` a reading. */
export function kindOfUnit(symbol: string): Kind {
  if (symbol === 'choice') return { is: 'choice' };
  if (symbol === 'yes_no') return YES_NO;
  return figureKindOfUnit(unitOf(symbol));
}

export function figureKindOfUnit(unit: Unit): FigureKind {
  return { is: 'figure', dimension: unit.dimension, sort: sortOf(unit) };
}

export function figureKind(of: Dimension, sort: FigureKind['sort'] = 'number'): FigureKind {
  return { is: 'figure', dimension: of, sort };
}

interface NamedKind {
  readonly name: string;
  readonly unit: string;
  /** Other units that a builder may choose to see. */
  readonly shown: readonly string[];
}

/** Kinds by name, each with its plain unit and the units a workshop may choose; for a simple kind, all of its units. */
export const namedKinds: readonly NamedKind[] = [
  simpleKind('length', 'mm'),
  simpleKind('area', 'm2'),
  simpleKind('volume', 'L'),
  simpleKind('mass', 'kg'),
  simpleKind('pressure', 'kPa'),
  simpleKind('time', 'min'),
  simpleKind('money', 'money'),
  simpleKind('power', 'W'),
  simpleKind('energy', 'kWh'),
  simpleKind('light', 'mol'),
  { name: 'density', unit: 'kg/L', shown: ['kg/L', 'g/L', 'g/m3', 'oz/gal', 'lb/ft3'] },
  { name: 'mass per area', unit: 'g/m2', shown: ['g/m2', 'kg/m2', 'oz/ft2', 'lb/ft2'] },
  { name: 'flow', unit: 'mL/d', shown: ['mL/d', 'mL/min', 'L/d', 'fl_oz/d', 'gal/d'] },
  { name: 'rate', unit: 'each/d', shown: ['each/d', '%/d', 'each/h'] },
  { name: 'count per area', unit: 'each/m2', shown: ['each/m2', 'each/ft2'] },
  { name: 'count per length', unit: 'each/m', shown: ['each/m', 'each/ft'] },
  { name: 'light per area', unit: 'umol/m2/s', shown: ['umol/m2/s'] },
  { name: 'light of a day', unit: 'mol/m2/d', shown: ['mol/m2/d'] },
  { name: 'light per energy', unit: 'umol/J', shown: ['umol/J'] },
  { name: 'heat passage', unit: 'W/m2/K', shown: ['W/m2/K'] },
  { name: 'money per time', unit: 'money/h', shown: ['money/h'] },
  { name: 'money per mass', unit: 'money/kg', shown: ['money/kg'] },
  { name: 'money per volume', unit: 'money/L', shown: ['money/L'] },
];

function simpleKind(name: string, unit: string): NamedKind {
  return { name, unit, shown: unitsLike(unit) };
}

/** The kind in words: "length", "temperature step", "share", or its dimension if it has no name. */
export function sayKind(kind: Kind): string {
  if (kind.is === 'choice') return 'choice';
  if (kind.is === 'yes_no') return 'yes_no';
  if (kind.sort === 'reading') return 'temperature';
  if (isPlain(kind.dimension)) return kind.sort;
  if (sameDimension(kind.dimension, dimension({ temperature: 1 }))) return 'temperature step';
  return nameOf(kind)?.name ?? sayDimension(kind.dimension);
}

/** The unit for a figure of this kind if no line gives one: base units for an unnamed compound. */
export function plainUnitOf(kind: Kind): string {
  if (kind.is !== 'figure') return kind.is;
  if (kind.sort === 'reading') return 'degC';
  if (isPlain(kind.dimension)) return { count: 'each', share: '%', number: 'number' }[kind.sort];
  if (sameDimension(kind.dimension, dimension({ temperature: 1 }))) return 'K';
  return nameOf(kind)?.unit ?? baseUnitOf(kind.dimension);
}

/** Whether the kind is a compound such as kg/L, not a length, a volume or a plain figure. */
export function isCompound(kind: Kind): boolean {
  return kind.is === 'figure' && /[/.]/.test(plainUnitOf(kind));
}

const baseSymbols = ['m', 'kg', 's', 'K', 'money', 'mol'] as const;

function baseUnitOf(of: Dimension): string {
  const times = (sign: 1 | -1) =>
    baseSymbols.flatMap((symbol, at) => Array.from({ length: Math.max(0, sign * (of[at] ?? 0)) }, () => symbol));
  return [times(1).join('.') || 'each', ...times(-1)].join('/');
}

function nameOf(kind: FigureKind): NamedKind | undefined {
  return namedKinds.find((each) => sameDimension(unitOf(each.unit).dimension, kind.dimension));
}

function sortOf(unit: Unit): FigureKind['sort'] {
  if (unit.zero !== undefined) return 'reading';
  if (unit.symbol === 'each') return 'count';
  if (unit.symbol === '%' || unit.symbol === 'share') return 'share';
  return 'number';
}
