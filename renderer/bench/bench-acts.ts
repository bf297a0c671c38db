import type { RuleHelp } from '#renderer/writing/rule-help.ts';
import type { Tank } from '#shared-calc/records/records.ts';
import type { BoxChange, BoxPlace } from './view-model.ts';

/** Everything the bench can ask the store to do. */
export interface BenchActs {
  /** Writes all cells as one labelled change. Returns a sentence if it is refused; then nothing was written. */
  readonly write: (changes: readonly BoxChange[]) => string | undefined;
  /** Delete: local values return to the house values. */
  readonly clear: (places: readonly BoxPlace[]) => void;
  /** Shows in the status line what failed, with its cure. */
  readonly refuse: (sentence: string) => void;
  readonly helpFor: (place: BoxPlace) => RuleHelp;
  /** The selected cell, for the working panel; `undefined` on a section head or in the foot. */
  readonly choose: (place: BoxPlace | undefined) => void;
  readonly fold: (section: string) => void;
  readonly showAll: (section: string) => void;
  readonly setKit: (column: string, kit: string) => void;
  readonly setCount: (column: string, count: number) => void;
  readonly takeSize: () => void;
  readonly takeAgain: (column: string) => void;
  /** Adds another column of the same tank with the same local values. */
  readonly copySize: (column: string) => void;
  /** Names a size within this job. Returns a sentence if refused. An empty text restores the tank's name. */
  readonly nameSize: (column: string, label: string) => string | undefined;
  /** Builds a size by another recipe. */
  readonly setRecipe: (column: string, recipe: string) => void;
  readonly putAway: (column: string) => void;
  /** Moves a size to a place among the sizes, from 0 at the left. */
  readonly moveSize: (column: string, to: number) => void;
  readonly sendToHouse: (place: BoxPlace) => void;
  /** Makes the cell's value hold for its tank in every job. */
  readonly keepForTank: (place: BoxPlace) => string | undefined;
  /** Makes the cell's value, or `typed`, hold for the whole job. */
  readonly holdForJob: (place: BoxPlace, typed?: string) => string | undefined;
}

/** The same, plus the acts of the side panel and of the dialogs over the bench. */
export interface AllBenchActs extends BenchActs {
  readonly backToHouse: (place: BoxPlace) => void;
  readonly writeNote: (place: BoxPlace, note: string) => void;
  /** Records who asked for the local value. */
  readonly sayWhoAsked: (place: BoxPlace, by: 'client' | 'us') => string | undefined;
  /** Without a recipe, by that of the job. */
  readonly takeTank: (tank: string, recipe?: string) => string | undefined;
  readonly takeNewTank: (tank: Tank, terms: NewTankTerms) => string | undefined;
}

export interface NewTankTerms {
  readonly priceCoins?: number | undefined;
  readonly recipe?: string | undefined;
}
