import type { Act } from './act.ts';
import * as books from './book-acts.ts';
import * as jobs from './job-acts.ts';
import * as recipes from './recipe-acts.ts';
import { rescaleCoins } from './rescale-coins.ts';

/** Everything that a person can do to a book. */
export const allActs: readonly Act[] = [
  books.put,
  books.remove,
  rescaleCoins,
  recipes.addLine,
  recipes.renameLine,
  recipes.moveLine,
  recipes.removeLine,
  recipes.changeLine,
  recipes.writeLine,
  recipes.moveUse,
  recipes.copyRecipe,
  jobs.newJob,
  jobs.copyJob,
  jobs.moveJob,
  jobs.recordDeposit,
  jobs.setValues,
  jobs.setSizes,
  jobs.writeSurvey,
  jobs.writeJob,
  jobs.setNextAct,
  jobs.markOrdered,
  jobs.choosePacks,
];
