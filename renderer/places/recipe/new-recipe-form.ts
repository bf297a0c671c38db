import type { RecipeAnswers, RecipePart } from '#shared-calc/recipe/recipe-answers.ts';
import { patternIngredients } from '#shared-calc/recipe/pattern.ts';

export const layers = ['drainage', 'capping', 'soil', 'litter'] as const satisfies readonly RecipePart[];
type Layer = (typeof layers)[number];

/** From the bottom of the tank upwards. */
export const inTank = ['drainage', 'mesh', 'capping', 'soil', 'litter'] as const satisfies readonly RecipePart[];
export const fittings = [
  'background',
  'hardscape',
  'plants',
  'microfauna',
  'light',
  'mist',
] as const satisfies readonly RecipePart[];

export const partWords: Readonly<Record<RecipePart, string>> = {
  drainage: 'Drainage',
  mesh: 'Mesh',
  capping: 'Capping',
  soil: 'Soil',
  litter: 'Leaf litter',
  background: 'Background',
  hardscape: 'Hardscape',
  plants: 'Plants',
  microfauna: 'Springtails and isopods',
  light: 'Light',
  mist: 'Misting',
};

/** What is ticked and typed in the questions of a new recipe. */
export interface NewRecipe {
  readonly title: string;
  readonly parts: ReadonlySet<RecipePart>;
  readonly depths: Readonly<Partial<Record<Layer, string>>>;
  /** Names of ingredients that the program knows. */
  readonly mixed: ReadonlySet<string>;
  /** Other ingredients, with commas between. */
  readonly others: string;
  /** Parts by the name of an ingredient. */
  readonly shares: ReadonlyMap<string, string>;
  readonly animals: string;
}

export const noAnswers: NewRecipe = {
  title: '',
  parts: new Set(),
  depths: {},
  mixed: new Set(),
  others: '',
  shares: new Map(),
  animals: '',
};

interface Ingredient {
  readonly what: string;
  readonly label: string;
}

/** What the soil is mixed of: those that are ticked, then those that are typed. */
export function ingredientsOf({ mixed, others }: NewRecipe): readonly Ingredient[] {
  const known = knownIngredients().filter(({ what }) => mixed.has(what));
  const typed = others
    .split(',')
    .map((word) => word.trim())
    .filter((word) => word !== '');
  return [...known, ...[...new Set(typed)].map((word) => ({ what: word, label: word }))];
}

export function knownIngredients(): readonly Ingredient[] {
  return patternIngredients().map(({ name, need }) => ({ what: name, label: need.label ?? name }));
}

export function answersOf(form: NewRecipe): RecipeAnswers {
  const { parts, depths, shares, animals } = form;
  const has = (part: RecipePart) => parts.has(part);
  const depth = (layer: Layer) => has(layer) && ((depths[layer] ?? '').trim() || true);
  const share = (what: string) => (shares.get(what) ?? '').trim();
  return {
    drainage: depth('drainage'),
    mesh: has('mesh'),
    capping: depth('capping'),
    soil: depth('soil'),
    mix: has('soil')
      ? ingredientsOf(form).map(({ what }) => ({ what, ...(share(what) !== '' && { parts: share(what) }) }))
      : [],
    litter: depth('litter'),
    background: has('background'),
    hardscape: has('hardscape'),
    plants: has('plants'),
    microfauna: has('microfauna'),
    light: has('light'),
    mist: has('mist'),
    ...(animals !== '' && { animals }),
  };
}

/** A set with something in it or not. */
export function turned<T>(set: ReadonlySet<T>, each: T, on: boolean): ReadonlySet<T> {
  const next = new Set(set);
  if (on) next.add(each);
  else next.delete(each);
  return next;
}
