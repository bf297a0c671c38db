import type { Kind } from '#shared-calc/quantity/kind.ts';
import type { Place, Sign } from './tree.ts';

/** What is wrong with a rule: facts with a place, worded in words/say-rule-fault.ts. */
export type RuleFault = Place & (ReadFault | CheckFault);

/** What the parser expected instead. */
export type Wanted = 'figure' | 'sign' | 'close' | 'comma';

/** Found while parsing the text. */
export type ReadFault =
  | { readonly kind: 'empty' }
  | { readonly kind: 'too-long'; readonly length: number; readonly limit: number }
  | { readonly kind: 'too-deep'; readonly limit: number }
  | { readonly kind: 'too-large'; readonly found: string }
  /** `found` is empty at the end of the rule. */
  | { readonly kind: 'unexpected'; readonly found: string; readonly wanted: Wanted }
  | { readonly kind: 'bad-character'; readonly found: string }
  /** `1,5` inside brackets where the decimal comma is set: one figure, or `first` and `second`. */
  | { readonly kind: 'two-figures'; readonly found: string; readonly first: string; readonly second: string }
  | { readonly kind: 'unclosed-text' }
  | { readonly kind: 'leading-equals' }
  | { readonly kind: 'unknown-unit'; readonly unit: string; readonly near?: string };

/** Found while checking names and kinds. `most` is left out if there is no limit. */
export type CheckFault =
  | { readonly kind: 'unknown-name'; readonly name: string; readonly near?: string }
  | { readonly kind: 'unknown-function'; readonly name: string; readonly near?: string }
  | { readonly kind: 'not-a-call'; readonly name: string }
  | {
      readonly kind: 'too-few' | 'too-many';
      readonly fn: string;
      readonly given: number;
      readonly least: number;
      readonly most?: number;
    }
  | {
      readonly kind: 'wrong-argument';
      readonly fn: string;
      readonly argument: string;
      readonly wanted: string;
      readonly wantedUnits: string;
      readonly given: Kind;
    }
  | {
      readonly kind: 'not-an-option';
      readonly fn?: string;
      readonly text: string;
      readonly options: readonly string[];
      readonly near?: string;
    }
  | { readonly kind: 'cannot-join'; readonly sign: Sign; readonly left: Kind; readonly right: Kind }
  | { readonly kind: 'reading-alone'; readonly sign: Sign | 'sum' | 'abs' | 'round_to' }
  | { readonly kind: 'bad-power' }
  | { readonly kind: 'bad-root'; readonly given: Kind }
  | { readonly kind: 'rounds-plain-only'; readonly fn: string; readonly given: Kind }
  | { readonly kind: 'needs-plain'; readonly given: Kind; readonly fn: string }
  | { readonly kind: 'needs-yes-no'; readonly given: Kind; readonly fn?: string }
  | { readonly kind: 'needs-figure'; readonly given: Kind; readonly fn?: string }
  | { readonly kind: 'branches-differ'; readonly fn: string; readonly left: Kind; readonly right: Kind }
  | { readonly kind: 'arguments-disagree'; readonly fn: string; readonly given: readonly Kind[] }
  | { readonly kind: 'wrong-kind-for-line'; readonly wanted: Kind; readonly unit: string; readonly given: Kind };

/** The problem of a figure being worked out: a fact about a cell, not about a rule's text. */
export type FigureProblem =
  | { readonly kind: 'missing'; readonly line: string }
  | { readonly kind: 'refused'; readonly fn: string; readonly says: string }
  | { readonly kind: 'divided-by-zero' }
  | { readonly kind: 'not-a-number' };
