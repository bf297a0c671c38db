import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { Job } from '#shared-calc/records/records.ts';

/** Why a change of a house is not proposed, put in force, dropped or answered. */
export type HouseFault =
  /** The edit leaves every line of the house as it is. */
  | { readonly kind: 'no-house-change'; readonly recipe: string }
  | { readonly kind: 'in-force-already'; readonly change: string; readonly on: string; readonly display: Display }
  | { readonly kind: 'only-proposed'; readonly change: string }
  /** The line that a proposal is of has left the house. */
  | { readonly kind: 'line-gone'; readonly change: string; readonly line: string }
  | {
      readonly kind: 'answered-already';
      readonly change: string;
      readonly job: string;
      readonly answer: string;
      readonly on: string;
      readonly display: Display;
    }
  /** The job follows its house, or the quote has the change already. */
  | {
      readonly kind: 'not-offered';
      readonly change: string;
      readonly job: string;
      readonly why: 'follows' | 'in quote' | 'other recipe';
    }
  | { readonly kind: 'too-late-to-take'; readonly change: string; readonly job: string; readonly state: Job['state'] }
  | { readonly kind: 'cannot-take'; readonly change: string; readonly job: string; readonly label: string };
