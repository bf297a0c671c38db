import type { Command } from './command.ts';
import { actCommand, actsCommand } from './commands/act.ts';
import { animalsCommand } from './commands/animals.ts';
import { benchCommand } from './commands/bench.ts';
import { bookBackupCommands } from './commands/book-backups.ts';
import { bookCheckCommand, bookExportCommand, bookNewCommand } from './commands/book.ts';
import { changedCommand } from './commands/changed.ts';
import { completionCommand } from './commands/completion.ts';
import { culturesCommand } from './commands/cultures.ts';
import { didCommand } from './commands/did.ts';
import { functionsCommand } from './commands/functions.ts';
import { importPricesCommand } from './commands/import-prices.ts';
import { jobCommands } from './commands/job.ts';
import { houseCommands } from './commands/house.ts';
import { recipeCommands } from './commands/recipe.ts';
import { recipeNewCommand } from './commands/recipe-new.ts';
import { jobsCommand } from './commands/jobs.ts';
import { needsCommand } from './commands/needs.ts';
import { orderCommands } from './commands/order.ts';
import { paperCommand, papersCommand } from './commands/paper.ts';
import { prepareCommand } from './commands/prepare.ts';
import { priceListCommands } from './commands/price-lists.ts';
import { missingCommand } from './commands/prices-missing.ts';
import { pricesCommands } from './commands/prices.ts';
import { quoteCommand } from './commands/quote.ts';
import { runCommand } from './commands/run.ts';
import { storeCommands } from './commands/store.ts';
import { startCommand } from './commands/start.ts';
import { todayCommand } from './commands/today.ts';
import { treatCommand } from './commands/treat.ts';
import { tubCommands } from './commands/tub.ts';
import { workCommand } from './commands/work.ts';

const all: readonly Command[] = [
  workCommand,
  benchCommand,
  needsCommand,
  runCommand,
  ...storeCommands,
  ...orderCommands,
  quoteCommand,
  changedCommand,
  todayCommand,
  jobsCommand,
  ...jobCommands,
  ...houseCommands,
  ...recipeCommands,
  recipeNewCommand,
  actsCommand,
  actCommand,
  prepareCommand,
  didCommand,
  treatCommand,
  culturesCommand,
  ...tubCommands,
  animalsCommand,
  functionsCommand,
  papersCommand,
  paperCommand,
  bookNewCommand,
  bookCheckCommand,
  bookExportCommand,
  ...bookBackupCommands,
  importPricesCommand,
  ...priceListCommands,
  ...pricesCommands,
  missingCommand,
  startCommand,
  completionCommand(() => all),
];

export const commands: ReadonlyMap<string, Command> = new Map(all.map((command) => [command.name, command]));
export const commandNames: readonly string[] = all.map((command) => command.name);
