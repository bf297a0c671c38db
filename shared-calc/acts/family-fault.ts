import type { UseName } from '#shared-calc/fields/uses.ts';

/** What an edit would do to a recipe that inherits it, or to some tanks alone. */
export interface InRecipe<Fault> {
  readonly kind: 'in-recipe';
  readonly recipe: string;
  readonly tank?: string;
  readonly fault: Fault;
}

/** Why a recipe of a family is not changed so. */
export type FamilyFault =
  | { readonly kind: 'use-taken'; readonly use: UseName; readonly label: string }
  /** A name is the same in the whole family. */
  | { readonly kind: 'inherited-name'; readonly line: string; readonly recipe: string; readonly parent: string }
  | { readonly kind: 'no-parent'; readonly recipe: string }
  | { readonly kind: 'has-parent'; readonly recipe: string; readonly parent: string }
  /** The lines differ for some tanks alone; which of them, by their labels. */
  | {
      readonly kind: 'for-tanks-only';
      readonly recipe: string;
      readonly lines: readonly string[];
      readonly act: 'take' | 'send';
    }
  /** A line differs otherwise for one tank than for another; nobody said whose figure goes up for all. */
  | { readonly kind: 'several-for-tanks'; readonly line: string; readonly tanks: readonly string[] }
  /** The recipe differs in no line of these from its parent. */
  | { readonly kind: 'no-difference'; readonly recipe: string; readonly lines: readonly string[] }
  /** Nothing of what the recipe changes has changed in its parent since. */
  | { readonly kind: 'nothing-to-take'; readonly recipe: string; readonly parent: string }
  | { readonly kind: 'recipe-taken'; readonly recipe: string }
  | { readonly kind: 'no-tank-of-family'; readonly tank: string };
