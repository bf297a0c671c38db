import type { Act } from './act.ts';
import * as books from './book-acts.ts';
import * as cells from './cell-acts.ts';
import * as animals from './animal-acts.ts';
import { copyRecipe } from './copy-recipe.ts';
import * as families from './family-acts.ts';
import * as tankLines from './tank-line-acts.ts';
import { did } from './did-act.ts';
import { editHouse } from './edit-house.ts';
import * as houses from './house-acts.ts';
import { takeInList } from './import-acts.ts';
import * as jobs from './job-acts.ts';
import { replaceInRecipe } from './replace-in-recipe.ts';
import * as recipes from './recipe-acts.ts';
import { chooseCurrency, rescaleCoins } from './rescale-coins.ts';
import * as sizes from './size-acts.ts';
import { placeLine } from './place-line.ts';
import { moveSize } from './size-order.ts';
import * as batches from './batch-acts.ts';
import * as keeps from './keep-acts.ts';
import * as measures from './measure-acts.ts';
import * as moves from './move-acts.ts';
import * as prices from './price-acts.ts';
import { raisePrices } from './price-rise.ts';
import * as quoteLines from './quote-line-acts.ts';
import * as orders from './order-acts.ts';
import { receiveOrder } from './receive-acts.ts';
import { makeChild } from './make-child.ts';
import { makeRecipe } from './make-recipe.ts';
import * as severalLines from './several-lines.ts';
import * as store from './store-acts.ts';
import { takePriceList } from './take-price-list.ts';
import * as tubs from './tub-acts.ts';
import * as tubMoves from './tub-moves.ts';

/** Everything that a person can do to a book, by name. */
const acts = {
  put: books.put,
  putAll: books.putAll,
  remove: books.remove,
  removeAll: books.removeAll,
  takeInList,
  rescaleCoins,
  chooseCurrency,
  addLine: recipes.addLine,
  renameLine: recipes.renameLine,
  moveLine: recipes.moveLine,
  placeLine,
  removeLine: recipes.removeLine,
  changeLine: recipes.changeLine,
  writeLine: recipes.writeLine,
  moveUse: recipes.moveUse,
  replaceInRecipe,
  writeRecipe: recipes.writeRecipe,
  makeRecipe,
  removeLines: severalLines.removeLines,
  takeLines: severalLines.takeLines,
  copyRecipe,
  forkRecipe: families.forkRecipe,
  makeChild,
  takeFromParent: families.takeFromParent,
  sendToParent: families.sendToParent,
  writeLineFor: tankLines.writeLineFor,
  keepForTank: tankLines.keepForTank,
  proposeHouse: houses.proposeHouse,
  editHouse,
  forceHouse: houses.forceHouse,
  dropHouse: houses.dropHouse,
  answerHouse: houses.answerHouse,
  newJob: jobs.newJob,
  copyJob: jobs.copyJob,
  moveJob: moves.moveJob,
  recordDeposit: jobs.recordDeposit,
  setValues: jobs.setValues,
  setSizes: jobs.setSizes,
  writeSurvey: jobs.writeSurvey,
  writeJob: jobs.writeJob,
  setNextAct: jobs.setNextAct,
  did,
  choosePacks: jobs.choosePacks,
  writeCells: cells.writeCells,
  backToHouse: cells.backToHouse,
  setKit: cells.setKit,
  holdForJob: cells.holdForJob,
  noteCell: cells.noteCell,
  sayWhoAsked: cells.sayWhoAsked,
  sendToHouse: cells.sendToHouse,
  takeSize: sizes.takeSize,
  newTank: sizes.newTank,
  takeAgain: sizes.takeAgain,
  copySize: sizes.copySize,
  dropSize: sizes.dropSize,
  setCount: sizes.setCount,
  nameSize: sizes.nameSize,
  moveSize,
  setAnimals: sizes.setAnimals,
  setRecipe: sizes.setRecipe,
  putIn: store.putIn,
  correctLot: store.correctLot,
  useStock: store.useStock,
  wasteStock: store.wasteStock,
  sellStock: store.sellStock,
  countStock: store.countStock,
  keepStock: keeps.keepStock,
  release: keeps.release,
  keepNeeded: keeps.keepNeeded,
  setLeast: store.setLeast,
  placeOrders: orders.placeOrders,
  newOrder: orders.newOrder,
  receiveOrder,
  closeOrder: orders.closeOrder,
  addQuoteLine: quoteLines.addQuoteLine,
  changeQuoteLine: quoteLines.changeQuoteLine,
  removeQuoteLine: quoteLines.removeQuoteLine,
  newPack: prices.newPack,
  putPrice: prices.putPrice,
  confirmPrices: prices.confirmPrices,
  raisePrices,
  takePriceList,
  startTub: tubs.startTub,
  changeTub: tubs.changeTub,
  harvestTub: tubMoves.harvestTub,
  countTub: tubMoves.countTub,
  endTub: tubs.endTub,
  removeTub: tubs.removeTub,
  newBatch: batches.newBatch,
  logBatch: batches.logBatch,
  removeBatch: batches.removeBatch,
  newAnimalBatch: animals.newAnimalBatch,
  changeAnimals: animals.changeAnimals,
  joinAnimals: animals.joinAnimals,
  lookAtAnimals: animals.lookAtAnimals,
  testAnimals: animals.testAnimals,
  placeAnimals: animals.placeAnimals,
  takeBackAnimals: animals.takeBackAnimals,
  keepWatch: measures.keepWatch,
  writeTook: measures.writeTook,
  teachFromWatch: measures.teachFromWatch,
  teachHouse: measures.teachHouse,
  teachPlantLoss: measures.teachPlantLoss,
};

export type ActName = keyof typeof acts;

export type ActInputs = { readonly [N in ActName]: (typeof acts)[N] extends Act<infer I> ? I : never };

/** The acts as one table, so that an act and its input can be named together. */
export const actTable: { readonly [N in ActName]: Act<ActInputs[N]> } = acts;

export const allActs: readonly Act[] = Object.values(acts);
