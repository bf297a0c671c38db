import type { SectionFigures } from '#renderer/drawing/section-figures.ts';
import type { SignName } from '#renderer/frame/sign.tsx';

/** Looks of a cell other than house, job and local. */
export type BoxLook =
  | 'plain'
  | 'needs'
  | 'range'
  | 'waiting'
  | 'loop'
  | 'old'
  | 'issued'
  | 'stop'
  | 'watch'
  | 'advice'
  | 'holds'
  | 'headline';

/** A painted cell. One that did not change is the same object in the next view, or is equal in all fields. */
export interface BoxView {
  /** A well can be written in; flat is computed. Both can be overridden unless `closed`, and show it by an edge. */
  readonly form: 'well' | 'flat';
  readonly source: 'house' | 'job' | 'local';
  readonly look: BoxLook;
  readonly sign?: SignName;
  /** Words at the left. */
  readonly said: string;
  /** Figure at the right, without its unit. */
  readonly figure: string;
  /** Read out: line, tank, figure with unit, state. */
  readonly spoken: string;
  /** The text the editor opens with. */
  readonly entry: string;
  /** The text that is copied. */
  readonly copied: string;
  /** Cannot be overridden: an issued quote, a section's headline, a limit of the place. */
  readonly closed: boolean;
  /** What closes it, after "is"; and why, as a sentence. Left out of an issued quote and a headline. */
  readonly closedBy?: { readonly is: string; readonly why: string };
}

export interface SectionRow {
  readonly kind: 'section';
  readonly id: string;
  readonly title: string;
  readonly open: boolean;
  /** `10 more`, `10 more hold`; empty if no line is hidden. */
  readonly more: string;
  /** The hidden lines are shown. */
  readonly all: boolean;
  /** What a closed section holds that must be visible: `1 local`, `1 out of range`. */
  readonly holds: string;
}

export interface LineRow {
  readonly kind: 'line';
  /** The line's name. */
  readonly id: string;
  readonly label: string;
  /** `3 parts`, in small muted type. */
  readonly aside: string;
  /** As displayed: `°C`, `m²`. */
  readonly unit: string;
  readonly inset: boolean;
}

export type FootId = 'mass' | 'hours' | 'cost' | 'net' | 'tax' | 'gross' | 'deposit' | 'flags';

export interface FootRow {
  readonly kind: 'foot';
  readonly id: FootId;
  readonly label: string;
  readonly unit: string;
  /** Of all builds of all sizes; left out while the job has one build. */
  readonly total?: FootTotal;
}

/** A sum over the whole job. */
export interface FootTotal {
  /** Empty while nothing of it is known. */
  readonly figure: string;
  /** `at least`, `not known yet`, `3 prices missing`; empty if it is whole. */
  readonly short: string;
  /** What it is a sum of. */
  readonly says: string;
}

export type BenchRow = SectionRow | LineRow | FootRow;

export interface FlagView {
  readonly look: 'stop' | 'watch' | 'advice' | 'needs' | 'range' | 'old' | 'loop' | 'waiting';
  readonly sign: SignName;
  /** `1 stop`, `2 need a figure`. */
  readonly says: string;
}

export interface FootBox {
  readonly figure: string;
  readonly flags: readonly FlagView[];
  readonly spoken: string;
  readonly copied: string;
}

/** The card over a strip. */
export interface HeadView {
  /** `T07`, or `T07#2`. */
  readonly key: string;
  readonly label: string;
  /** `900 × 445 × 600 mm`. */
  readonly size: string;
  readonly kit: string;
  readonly kits: readonly { readonly value: string; readonly label: string }[];
  readonly count: number;
  readonly section: SectionFigures;
  readonly issued: boolean;
  /** The recipe that it is built by, and its words where it is not that of the job. */
  readonly recipe: string;
  readonly ownRecipe: string;
  readonly recipes: readonly { readonly value: string; readonly label: string }[];
}

export interface RecipeHead {
  readonly title: string;
  /** `laid flat for this job`; empty if there is nothing to add. */
  readonly aside: string;
}

/** The whole bench at one moment. */
export interface BenchView {
  readonly recipe: RecipeHead;
  /** Rows shown now, from the top: section heads and the visible lines. */
  readonly rows: readonly (SectionRow | LineRow)[];
  readonly foot: readonly FootRow[];
  readonly columns: readonly HeadView[];
  /** A line's cell, or a section's headline; `undefined` if the cell is empty. */
  readonly boxOf: (row: string, column: string) => BoxView | undefined;
  readonly footOf: (row: FootId, column: string) => FootBox;
}

export interface BoxPlace {
  readonly row: string;
  readonly column: string;
}

export interface BoxChange extends BoxPlace {
  /** As typed or pasted; the store parses it. */
  readonly text: string;
}
