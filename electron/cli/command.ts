import type { Outcome } from './outcome.ts';
import type { Arguments, OptionTable } from './read-arguments.ts';

export interface Command {
  readonly name: string;
  /** One line of usage, and what the command does. */
  readonly usage: string;
  readonly options: OptionTable;
  /** Checks the arguments before anything is opened; returns a sentence if they are wrong. */
  readonly misuse?: (given: Arguments) => string | undefined;
  readonly run: (given: Arguments) => Outcome | Promise<Outcome>;
}
