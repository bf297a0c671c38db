import type { Outcome } from './outcome.ts';
import type { Arguments, OptionTable } from './read-arguments.ts';

export interface Command {
  readonly name: string;
  /** One line on how it is called, and what it does. */
  readonly usage: string;
  readonly options: OptionTable;
  /** What is wrong with how it was called, before anything is opened; nothing where it is right. */
  readonly misuse?: (given: Arguments) => string | undefined;
  readonly run: (given: Arguments) => Outcome | Promise<Outcome>;
}
