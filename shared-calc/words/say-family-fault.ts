import type { ActFault } from '#shared-calc/acts/act-fault.ts';
import type { FamilyFault, InRecipe } from '#shared-calc/acts/family-fault.ts';
import { nounOf } from '#shared-calc/fields/uses.ts';
import type { Sayings } from './say-by-kind.ts';
import type { Called } from './called.ts';

type Said = Sayings<FamilyFault | InRecipe<ActFault>, [Called]>;

/** The sentences of a family of recipes; `say` is that of any fault. */
export function familySayings(say: (fault: ActFault, called: Called) => string): Said {
  return {
    'in-recipe': ({ recipe, tank, fault }, called) =>
      `In ${recipe}${tank === undefined ? '' : ` for ${tank}`}: ${say(fault, called)}`,
    'use-taken': ({ use, label }) => `The program reads ${label} for ${nounOf(use)}: move that use first.`,
    'inherited-name': ({ line, recipe, parent }) =>
      `${line} has its name from ${parent}: rename it there. Its name in words may be another in ${recipe}.`,
    'no-parent': ({ recipe }) => `${recipe} has no parent: it stands alone.`,
    'has-parent': ({ recipe, parent }) => `${recipe} is a child of ${parent} already.`,
    'for-tanks-only': ({ recipe, lines, act }) =>
      `${recipe} differs in ${lines.join(', ')} only for some tanks: ${act === 'send' ? 'send it up for these tanks, or for all' : 'take it for these tanks too'}.`,
    'several-for-tanks': ({ line, tanks }) =>
      `${line} is one figure for ${tanks.join(', another for ')}: say whose goes up for all.`,
    'no-difference': ({ recipe, lines }) =>
      lines.length === 0
        ? `${recipe} differs in nothing from its parent.`
        : `${recipe} differs in no line called ${lines.join(', ')}.`,
    'nothing-to-take': ({ recipe, parent }) => `${parent} has nothing new in what ${recipe} changes.`,
    'recipe-taken': ({ recipe }) => `There is a recipe called ${recipe} already: choose another code.`,
    'no-tank-of-family': ({ tank }) => `There is no tank called ${tank}.`,
  };
}
