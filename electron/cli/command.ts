import type { Outcome } from './outcome.ts';
import type { Arguments, OptionTable } from './read-arguments.ts';

export interface Command {
  readonly name: string;
  /** One line on how it is called, and what it does. */
  readonly usage: string;
  readonly options: OptionTable;
  readonly run: (given: Arguments) => Outcome | Promise<Outcome>;
}
