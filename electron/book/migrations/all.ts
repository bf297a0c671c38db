import { firstBook } from './0001-first-book.ts';
import { runningCostsAndChoices } from './0002-running-costs-and-choices.ts';
import { lineUses } from './0003-line-uses.ts';
import { ranges } from './0004-ranges.ts';
import { heatOfTheWorkshop } from './0005-heat-of-the-workshop.ts';
import { culturesAsStock } from './0006-cultures-as-stock.ts';
import { workedAir } from './0007-worked-air.ts';
import { warmingWords } from './0008-warming-words.ts';
import { sources } from './0009-sources.ts';
import { animals } from './0010-animals.ts';
import { structuredSurvey } from './0011-survey.ts';
import { oneTableOfCautions } from './0012-one-table-of-cautions.ts';
import { thingsDone } from './0013-things-done.ts';
import { animalsOfACulture } from './0014-animals-of-a-culture.ts';
import { asSold } from './0015-as-sold.ts';
import { stepsDone } from './0016-steps-done.ts';
import { offers } from './0017-offers.ts';
import { oneLedger } from './0018-one-ledger.ts';
import { unitsAsTyped } from './0019-units-as-typed.ts';
import { priceLists } from './0020-price-lists.ts';
import { recipeFamily } from './0021-recipe-family.ts';
import { tableViews } from './0022-table-views.ts';
import { notGiven } from './0023-not-given.ts';
import { checksums } from './0024-checksums.ts';
import { plantsPromised } from './0025-plants-promised.ts';
import type { Migration } from './migration.ts';

export const migrations: readonly Migration[] = [
  firstBook,
  runningCostsAndChoices,
  lineUses,
  ranges,
  heatOfTheWorkshop,
  culturesAsStock,
  workedAir,
  warmingWords,
  sources,
  animals,
  structuredSurvey,
  oneTableOfCautions,
  thingsDone,
  animalsOfACulture,
  asSold,
  stepsDone,
  offers,
  oneLedger,
  unitsAsTyped,
  priceLists,
  recipeFamily,
  tableViews,
  notGiven,
  checksums,
  plantsPromised,
];
