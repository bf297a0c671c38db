import { calledOf } from '#shared-calc/fields/record-fields.ts';
import { disorderOf, type Disorder } from './animal-order.ts';
import type { Added } from './change.ts';
import { valueOf } from './field-text.ts';
import type { CultureKind, Line, Material, Recipe, Records, Tank } from './records.ts';
import { isMeasured, tankMeasures } from './tank-shape.ts';

/** What is wrong with a record as a whole, though each of its fields is valid. */
export type Misfit =
  | { readonly kind: 'over'; readonly what: 'dam' | 'side return'; readonly mm: number; readonly most: number }
  | { readonly kind: 'vent-over-height' }
  | { readonly kind: 'bow-over-depth' }
  /** `measure` is the measurement that the shape lacks, as a sentence begins with it. */
  | { readonly kind: 'not-of-shape'; readonly shape: string; readonly measure: string }
  | { readonly kind: 'as-deep-as-long'; readonly shape: string }
  | { readonly kind: 'backward'; readonly of: 'light' | 'warmth' | 'days'; readonly from: Bound; readonly to: Bound }
  | Disorder
  | { readonly kind: 'harvest-over-capacity'; readonly animals: number; readonly capacity: number }
  | { readonly kind: 'flies-without-days' }
  /** Tanks, materials and plants share the price book, so their codes must differ. */
  | { readonly kind: 'same-code'; readonly by: GoodsKind }
  /** A recipe may not inherit from itself, straight or through others. */
  | { readonly kind: 'own-ancestor'; readonly recipe: string; readonly parent: string }
  | { readonly kind: 'family-too-deep'; readonly recipe: string; readonly most: number }
  /** Minutes are paid by the hour. */
  | { readonly kind: 'not-hourly'; readonly rate: string }
  /** Packs or stock are counted in the material's present unit. */
  | { readonly kind: 'unit-counted'; readonly unit: string };

type GoodsKind = 'tank' | 'material' | 'plant';
type Bound = number | string;

/** What is wrong with a record in its book. */
export function misfitOf(to: Added, records: Records): Misfit | undefined {
  switch (to.kind) {
    case 'tank':
      return sameCode('tank', to.record.id, records) ?? tankMisfit(to.record);
    case 'material':
      return materialMisfit(to.record, records);
    case 'plant':
      return sameCode('plant', to.record.id, records) ?? backward('light', to.record.lightLow, to.record.lightHigh);
    case 'cultureKind':
      return cultureMisfit(to.record);
    case 'animalKind':
      return disorderOf(to.record, records);
    case 'closedDay':
      return backward('days', to.record.from, to.record.to);
    default:
      return recipeMisfit(to, records);
  }
}

function recipeMisfit({ kind, record }: Added, records: Records): Misfit | undefined {
  if (kind === 'recipe') return parentMisfit(record, records);
  return kind === 'line' ? hourMisfit(record, records) : undefined;
}

function sameCode(kind: GoodsKind, id: string, records: Records): Misfit | undefined {
  const by = (['tank', 'material', 'plant'] as const).find((other) => other !== kind && records[other].has(id));
  return by && { kind: 'same-code', by };
}

/** How many parents a recipe may have above it. */
const DEEPEST = 4;

function parentMisfit({ id, parent }: Recipe, { recipe }: Records): Misfit | undefined {
  const above: string[] = [];
  for (let at = parent; at !== undefined; at = recipe.get(at)?.parent) {
    if (at === id || above.includes(at)) return { kind: 'own-ancestor', recipe: id, parent: parent ?? '' };
    above.push(at);
  }
  const below = parent === undefined ? 0 : depthBelow(id, recipe);
  return above.length + below > DEEPEST ? { kind: 'family-too-deep', recipe: id, most: DEEPEST } : undefined;
}

function depthBelow(id: string, recipe: Records['recipe']): number {
  const children = [...recipe.values()].filter((each) => each.parent === id);
  return Math.max(0, ...children.map((child) => 1 + depthBelow(child.id, recipe)));
}

function hourMisfit({ who }: Line, { rate }: Records): Misfit | undefined {
  const paid = who === undefined ? undefined : rate.get(who);
  return paid && paid.per !== 'h' ? { kind: 'not-hourly', rate: paid.label } : undefined;
}

export function tankMisfit(tank: Tank): Misfit | undefined {
  const { shape, insideLengthMm: length, insideDepthMm: depth, insideHeightMm: height } = tank;
  const foreign = tankMeasures.find((key) => isForeign(tank, key));
  if (foreign !== undefined) return notOfShape(shape, foreign);
  return (
    over('dam', tank.damHeightMm, height) ??
    (isOver(tank.frontVentMm, height) ? { kind: 'vent-over-height' } : undefined) ??
    over('side return', tank.sideReturnMm, length) ??
    (isOver(tank.frontBowMm, depth) ? { kind: 'bow-over-depth' } : undefined)
  );
}

function over(what: 'dam' | 'side return', mm = 0, most = Infinity): Misfit | undefined {
  return mm > most ? { kind: 'over', what, mm, most } : undefined;
}

/** In a shape without a depth, the depth equals the length. */
function isForeign(tank: Tank, key: string): boolean {
  const value = valueOf(tank, key);
  return !isMeasured(tank.shape, key) && key !== 'insideDepthMm' && typeof value === 'number' && value > 0;
}

/** The fault of a measurement that a shape does not have. */
export function notOfShape(shape: Tank['shape'], key: string): Misfit {
  if (key === 'insideDepthMm') return { kind: 'as-deep-as-long', shape };
  return { kind: 'not-of-shape', shape, measure: calledOf('tank', key) };
}

function isOver(one: number | undefined, other: number | undefined): boolean {
  return one !== undefined && other !== undefined && one > other;
}

function materialMisfit({ id, unit }: Material, records: Records): Misfit | undefined {
  const taken = sameCode('material', id, records);
  if (taken) return taken;
  const before = records.material.get(id);
  if (!before || before.unit === unit) return undefined;
  const isCounted =
    [...records.pack.values()].some(({ material }) => material === id) ||
    [...records.move.values()].some(({ of }) => of === id);
  return isCounted ? { kind: 'unit-counted', unit: before.unit } : undefined;
}

function cultureMisfit(kind: CultureKind): Misfit | undefined {
  const { lowestC, highestC, yield: animals, capacity } = kind;
  if (kind.animals === 'flies' && kind.productiveDays === undefined) return { kind: 'flies-without-days' };
  const wrong = backward('warmth', lowestC, highestC);
  return wrong ?? (animals > capacity ? { kind: 'harvest-over-capacity', animals, capacity } : undefined);
}

function backward<T extends Bound>(of: 'light' | 'warmth' | 'days', from: T, to: T): Misfit | undefined {
  return from > to ? { kind: 'backward', of, from, to } : undefined;
}
