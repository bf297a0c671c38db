import type { UseName } from '#shared-calc/fields/uses.ts';
import type { Decides } from './deciders.ts';
import type { Hazard } from './hazards.ts';
import type { CautionSource } from './sources.ts';

/**
 * A figure that a sentence takes in: of this tank, by use; `tank` is its name; the others come from the plan or the
 * envelope at hand.
 */
export type CautionFigure = UseName | 'tank' | 'hottestOven' | 'dryExtra' | 'tooWarm' | 'emergency';

/** A caution of the table. The program reminds; a person or an office decides. */
export interface CautionEntry {
  /** What it is about, in front of the sentence on a paper. */
  readonly about: string;
  /**
   * Names in braces are figures to fill in (`CautionFigure`). In square brackets are figures of one unit, which is said
   * once: a workshop reads them in its own (`cautionInUnits`).
   */
  readonly says: string;
  /** The sentence where no tank is at hand; every sentence with braces has one. */
  readonly anyTank?: string;
  readonly decides: Decides;
  readonly source: CautionSource;
  /** Empty for a caution about a figure. */
  readonly against: readonly Hazard[];
  /** The figures it is beside, by the uses of their lines. */
  readonly uses?: readonly UseName[];
  /** A client reads it on the quote. */
  readonly onQuote?: true;
  /** What makes those figures wrong. */
  readonly misleads?: string;
}
