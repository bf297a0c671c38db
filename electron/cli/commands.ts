import type { Command } from './command.ts';
import { benchCommand } from './commands/bench.ts';
import { bookCheckCommand, bookExportCommand } from './commands/book.ts';
import { functionsCommand } from './commands/functions.ts';
import { importPricesCommand } from './commands/import-prices.ts';
import { needsCommand } from './commands/needs.ts';
import { quoteCommand } from './commands/quote.ts';
import { runCommand } from './commands/run.ts';
import { workCommand } from './commands/work.ts';

const all: readonly Command[] = [
  workCommand,
  benchCommand,
  needsCommand,
  runCommand,
  quoteCommand,
  functionsCommand,
  bookCheckCommand,
  bookExportCommand,
  importPricesCommand,
];

export const commands: ReadonlyMap<string, Command> = new Map(all.map((command) => [command.name, command]));
export const commandNames: readonly string[] = all.map((command) => command.name);
