import type Database from 'better-sqlite3';

/** What a step did to a house recipe. */
export interface RecipeNote {
  readonly kind: 'recipe-worked';
  readonly recipe: string;
  /** How many lines it has more. */
  readonly added: number;
  /** Labels of the lines that are worked otherwise now. */
  readonly moved: readonly string[];
  /** Lines that the house has changed and that stay so; `house` is what a new house has, empty if it has none. */
  readonly kept: readonly { readonly label: string; readonly has: string; readonly house: string }[];
  /** Labels of lines left out because the house lacks a line that they read. */
  readonly left: readonly string[];
}

/** A workshop keeps the days for dead plants that its quotes named, by kit. */
export interface PlantsNote {
  readonly kind: 'plants-promised';
  readonly basicDays: number;
  readonly fullDays: number;
  readonly showDays: number;
}

/** What the user is told of a step. */
export type MigrationNote = RecipeNote | PlantsNote;

/** One change of the file format. It never changes after its release. */
export interface Migration {
  /** From 1 upward without a gap. */
  readonly version: number;
  readonly name: string;
  /** `day` is the day on which the book is brought forward. */
  readonly up: (db: Database.Database, tell: (note: MigrationNote) => void, day: string) => void;
}
