import type { OrderLine } from '#shared-calc/buy/order-standing.ts';
import type { Against } from '#shared-calc/derive/against-move.ts';
import type { WatchLessonFault } from '#shared-calc/derive/watch-lesson.ts';
import type { UseName } from '#shared-calc/fields/uses.ts';
import type { JobFault } from '#shared-calc/jobs/job-fault.ts';
import type { LogFault } from '#shared-calc/prepare/log-rows.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { BoxFault } from '#shared-calc/recipe/read-box.ts';
import type { FieldIssue, RecordFault, RecordName } from '#shared-calc/records/book-fault.ts';
import type { Misfit } from '#shared-calc/records/misfit.ts';
import type { Job } from '#shared-calc/records/records.ts';
import type { LineNameFault } from '#shared-calc/rule/line-name.ts';
import type { FamilyFault, InRecipe } from './family-fault.ts';
import type { HouseFault } from './house-fault.ts';
import type { RefusedRow } from './import-list.ts';
import type { UseFault } from './move-use.ts';

export interface RuleBreak {
  readonly is: 'rule';
  readonly line: string;
  readonly label: string;
  readonly fault: BoxFault;
}

/** What can no longer be read, or no longer be said. */
export type Break =
  | RuleBreak
  | { readonly is: 'sentence'; readonly line: string; readonly label: string }
  /** A job has written a rule that reads the line; the label names the job. */
  | { readonly is: 'job rule'; readonly line: string; readonly label: string };

export type Need =
  | Break
  | { readonly is: 'program'; readonly what: string; readonly why: string }
  | { readonly is: 'use'; readonly use: UseName }
  | { readonly is: 'written'; readonly job: string }
  /** A recipe that inherits the line changes it. */
  | { readonly is: 'changed below'; readonly recipe: string };

export interface LinesOfRecipe {
  readonly recipe: string;
  readonly lines: readonly { readonly line: string; readonly label: string }[];
}

/** A cell that refuses the text typed into it. */
export interface RefusedCell {
  readonly line: string;
  readonly label: string;
  /** The size as the person reads it. */
  readonly size: string;
  readonly fault: BoxFault;
}

/** Why an act is refused: facts, said by words/say-act-fault.ts. */
export type ActFault =
  | JobFault
  | RecordFault
  | Misfit
  | UseFault
  | { readonly kind: 'no-record'; readonly record: RecordName; readonly near?: string }
  | { readonly kind: 'needed'; readonly record: RecordName; readonly by: readonly Need[] }
  | { readonly kind: 'bad-name'; readonly fault: LineNameFault }
  | { readonly kind: 'name-taken'; readonly name: string }
  /** The line to move is already at the end of its recipe. */
  | { readonly kind: 'at-the-end'; readonly label: string; readonly end: 'first' | 'last' }
  | { readonly kind: 'done-for-nothing' }
  | { readonly kind: 'no-step'; readonly step: string; readonly steps: readonly string[]; readonly near?: string }
  | { readonly kind: 'no-unit'; readonly unit: string }
  | { readonly kind: 'bounds-crossed'; readonly low: number; readonly high: number }
  | { readonly kind: 'range-without-figure'; readonly line: string }
  | { readonly kind: 'half-a-range'; readonly line: string }
  /** All in the line's unit. */
  | {
      readonly kind: 'range-crossed';
      readonly line: string;
      readonly unit: string;
      readonly least: number;
      readonly likely: number;
      readonly most: number;
      readonly low: number | undefined;
      readonly high: number | undefined;
    }
  /** The sentence of a check has a name in braces that no line has. */
  | { readonly kind: 'sentence-names-no-line'; readonly name: string }
  /** Rules that can be read now and could not be read after the act. */
  | { readonly kind: 'would-break'; readonly breaks: readonly RuleBreak[] }
  /** The program reads the line for a use that its new unit does not fit. */
  | { readonly kind: 'use-stays'; readonly use: UseName }
  /** The coin of the currency changes every amount of the book; `rescaleCoins` does that. */
  | { readonly kind: 'coins-change'; readonly from: number; readonly to: number }
  /** An amount has parts that a coin with fewer decimals does not know. */
  | { readonly kind: 'uneven-coins'; readonly record: RecordName; readonly amount: string }
  | { readonly kind: 'cells-refused'; readonly cells: readonly RefusedCell[] }
  /** The cell is not written over, so there is nothing to take back, note or set for the whole job. */
  | { readonly kind: 'nothing-written'; readonly what: 'back' | 'note' | 'asker' | 'whole job' | 'tank' }
  /** A measurement of a tank cannot be set for the whole house. */
  | { readonly kind: 'tank-measure'; readonly line: string }
  | { readonly kind: 'code-taken'; readonly code: string }
  | { readonly kind: 'no-lines-chosen'; readonly section?: string }
  /** Lines to be taken read others that the recipe does not have. */
  | ({ readonly kind: 'reads-others' } & LinesOfRecipe)
  /** The recipe has lines of these names. */
  | ({ readonly kind: 'names-clash' } & LinesOfRecipe)
  | { readonly kind: 'no-size-name'; readonly size: string }
  | { readonly kind: 'size-name-long'; readonly size: string; readonly letters: number; readonly most: number }
  | { readonly kind: 'size-name-taken'; readonly name: string }
  | {
      readonly kind: 'not-to-give';
      readonly material: string;
      readonly unit: string;
      readonly asked: number;
      readonly free: number;
      /** How the workshop writes figures. */
      readonly display: Display;
    }
  | {
      readonly kind: 'more-than-stands';
      readonly goods: string;
      readonly unit: string;
      readonly stands: number;
      readonly display: Display;
    }
  /** What was taken later would not have been there. */
  | { readonly kind: 'counted-before'; readonly goods: string; readonly on: string; readonly display: Display }
  /** In the material's unit. */
  | { readonly kind: 'least-over-up-to'; readonly least: number; readonly upTo: number }
  /** Orders and moves are written by their own acts alone. */
  | { readonly kind: 'by-own-acts'; readonly record: RecordName }
  | { readonly kind: 'nothing-free'; readonly job: string }
  | { readonly kind: 'nothing-came' }
  | { readonly kind: 'no-order-line'; readonly order: string; readonly line: number; readonly lines: number }
  /** More came of a line than was still to come; packs. */
  | {
      readonly kind: 'more-than-open';
      readonly order: string;
      readonly line: OrderLine;
      readonly came: number;
      readonly open: number;
    }
  | { readonly kind: 'order-all-in'; readonly order: string }
  | { readonly kind: 'order-closed'; readonly order: string; readonly closedOn: string; readonly display: Display }
  /** The day lies before that of the order. */
  | {
      readonly kind: 'before-ordered';
      readonly order: string;
      readonly ordered: string;
      readonly on: string;
      readonly display: Display;
    }
  /** A pack that another supplier sells. */
  | { readonly kind: 'pack-of-another'; readonly pack: string; readonly supplier: string; readonly seller: string }
  | { readonly kind: 'pack-without-price'; readonly pack: string; readonly on: string; readonly display: Display }
  /** A harvest may not take so many animals from a tub on that day. */
  | {
      readonly kind: 'tub-gives-less';
      readonly tub: string;
      readonly asked: number;
      readonly may: number;
      readonly on: string;
      readonly display: Display;
    }
  /** It was not started yet, or has ended. */
  | { readonly kind: 'tub-not-standing'; readonly tub: string; readonly on: string; readonly display: Display }
  | { readonly kind: 'tub-moved-later'; readonly tub: string; readonly on: string; readonly display: Display }
  /** It stands warmer or colder than its growth is known for. */
  | { readonly kind: 'tub-not-known'; readonly tub: string }
  | { readonly kind: 'batch-has-less'; readonly batch: string; readonly asked: number; readonly has: number }
  /** `named` is the kind that the size names, if any. */
  | { readonly kind: 'animals-of-another-kind'; readonly batch: string; readonly size: string; readonly named?: string }
  | { readonly kind: 'still-placed'; readonly size: string; readonly batch: string }
  /** They go in on a day before their quarantine is over. */
  | {
      readonly kind: 'in-quarantine';
      readonly batch: string;
      readonly until: string;
      readonly daysLeft: number;
      readonly on: string;
      readonly display: Display;
    }
  /** A move that is made only with a name and a reason. */
  | {
      readonly kind: 'stands-against';
      readonly job: string;
      readonly state: Job['state'];
      readonly against: readonly Against[];
    }
  /** Why something was done is written with it, and by nothing else. */
  | { readonly kind: 'reason-stays'; readonly record: RecordName }
  /** House changes are written by the acts that change a house. */
  | { readonly kind: 'house-log'; readonly record: RecordName }
  | {
      readonly kind: 'no-quote-of-job';
      readonly quote: string;
      readonly job: string;
      readonly quotes: readonly string[];
      readonly near?: string;
    }
  | { readonly kind: 'quote-unreadable'; readonly quote: string }
  /** `words` count what differs: 2 boxes. */
  | { readonly kind: 'differs-from-quote'; readonly job: string; readonly quote: string; readonly words: string }
  | HouseFault
  | FamilyFault
  | InRecipe<ActFault>
  | { readonly kind: 'half-a-reason'; readonly lacks: 'reason' | 'who' }
  | { readonly kind: 'no-place-collected' }
  | { readonly kind: 'nobody-signs' }
  | { readonly kind: 'too-many-readings' }
  | { readonly kind: 'bad-log'; readonly rows: readonly LogFault[] }
  | WatchLessonFault
  /** The last jobs propose nothing for a line of the house. */
  | { readonly kind: 'no-lesson'; readonly label: string }
  | { readonly kind: 'no-words' }
  | { readonly kind: 'no-recipe-title' }
  | { readonly kind: 'not-sold-by'; readonly material: string; readonly supplier: string }
  | { readonly kind: 'no-supplier'; readonly supplier: string; readonly near?: string }
  | { readonly kind: 'nothing-priced'; readonly supplier: string; readonly on: string; readonly display: Display }
  | { readonly kind: 'pack-there'; readonly material: string }
  /** Two rows of a list are one new material, and are sold in units of two kinds. */
  | { readonly kind: 'unit-of-another'; readonly label: string; readonly unit: string; readonly own: string }
  | { readonly kind: 'rows-refused'; readonly rows: readonly RefusedRow[] }
  /** The input does not match the act's schema; `at` is the field, empty for the whole input. */
  | { readonly kind: 'bad-input'; readonly at: string; readonly issues: readonly FieldIssue[] };
