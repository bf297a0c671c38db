import type { RuleHelp } from '#renderer/writing/rule-help.ts';
import type { Tank } from '#shared-calc/records/records.ts';
import type { BoxChange, BoxPlace } from './view-model.ts';

/** Everything the bench asks of the store. */
export interface BenchActs {
  /** One labelled change of all boxes together; a sentence where it is refused, and then nothing was written. */
  readonly write: (changes: readonly BoxChange[]) => string | undefined;
  /** Delete: local values go back to the house. */
  readonly clear: (places: readonly BoxPlace[]) => void;
  /** Says in the quiet line what could not be done, with its cure. */
  readonly refuse: (sentence: string) => void;
  readonly helpFor: (place: BoxPlace) => RuleHelp;
  /** The chosen box, for the working panel; `undefined` on a section head or the foot. */
  readonly choose: (place: BoxPlace | undefined) => void;
  readonly fold: (section: string) => void;
  readonly showAll: (section: string) => void;
  readonly setKit: (column: string, kit: string) => void;
  readonly setCount: (column: string, count: number) => void;
  readonly takeSize: () => void;
  readonly takeAgain: (column: string) => void;
  /** Another column of the same tank with the same local values. */
  readonly copySize: (column: string) => void;
  /** What a size is called in this job; a sentence where it is refused. An empty text calls it by its tank. */
  readonly nameSize: (column: string, label: string) => string | undefined;
  readonly putAway: (column: string) => void;
}

/** The same with what the side panel and the dialogs over the bench ask for. */
export interface AllBenchActs extends BenchActs {
  readonly backToHouse: (place: BoxPlace) => void;
  readonly sendToHouse: (place: BoxPlace) => void;
  /** What stands in the box holds for the whole job; with `typed`, that does. */
  readonly holdForJob: (place: BoxPlace, typed?: string) => string | undefined;
  readonly writeNote: (place: BoxPlace, note: string) => void;
  /** Who asked for what the box is written over with. */
  readonly sayWhoAsked: (place: BoxPlace, by: 'client' | 'us') => string | undefined;
  readonly takeTank: (tank: string) => string | undefined;
  readonly takeNewTank: (tank: Tank, priceCoins?: number) => string | undefined;
}
