import type { PlaceId } from '#shared-calc/contract/places.ts';
import type { ActName } from '#shared-calc/words/act-names.ts';
import type { WordId } from './word-table.ts';

/** A main act of a place: by its button or menu entry, or described where it has no name of its own. */
export type MainAct =
  | { readonly act: ActName; readonly does: string }
  | { readonly how: string; readonly does: string };

export interface PlaceHelp {
  /** What the place is for. */
  readonly what: string;
  readonly acts: readonly [MainAct, MainAct, MainAct];
  /** Words used there. */
  readonly words: readonly WordId[];
}

/** Every place; one without help does not compile. */
export const placeHelp: Readonly<Record<PlaceId, PlaceHelp>> = {
  today: {
    what: 'What is to be done over all jobs: overdue, today and this week, and the next six weeks below.',
    acts: [
      { how: 'Tick a row', does: 'writes down that it is done, where it stands' },
      { how: 'Follow the words of a row', does: 'leads to the place where it is done' },
      { act: 'find', does: 'goes to a row by its words' },
    ],
    words: ['job-state', 'quarantine', 'tub', 'handover'],
  },
  jobs: {
    what: 'All jobs from the first enquiry to the care of the tank, and the card of the open one.',
    acts: [
      { act: 'newJob', does: 'begins a job with its title and its tanks' },
      { act: 'copyJob', does: 'begins another job with the same sizes and local values' },
      { how: 'Move on to the next state', does: 'takes the job a step further and says what stands against it' },
    ],
    words: ['job-state', 'survey', 'kit', 'deposit', 'sold-as'],
  },
  bench: {
    what: 'The sizes of the open job side by side: each line of the recipe worked for each tank, down to its price.',
    acts: [
      { act: 'takeSize', does: 'puts a tank beside the others' },
      { how: 'Write in a cell', does: 'makes a local value for that tank alone' },
      { act: 'makeQuote', does: 'goes on to the quote of the job' },
    ],
    words: [
      'size',
      'layers',
      'dam',
      'litter',
      'local',
      'house',
      'as-the-house',
      'send-to-house',
      'whole-job',
      'check',
      'cure',
      'range',
      'waits',
      'kit',
    ],
  },
  quotes: {
    what: 'The quote of the open job as the client will read it, and the quotes issued before.',
    acts: [
      { act: 'issue', does: 'gives the quote its number; from then on it never changes' },
      { act: 'print', does: 'puts it on paper or into a file' },
      { act: 'saveCsv', does: 'saves its lines and sums as a list' },
    ],
    words: ['revision', 'used-cost', 'packs-cost', 'margin', 'tax-class', 'deposit', 'seal', 'sold-as'],
  },
  needs: {
    what: 'What the open job needs of each material, what the store has, and the packs to buy.',
    acts: [
      { how: 'Choose the cost of materials', does: 'counts what goes in, or every pack that is bought' },
      { how: 'Take from the store first', does: 'sets off what lies there' },
      { act: 'saveCsv', does: 'saves the needs as a list' },
    ],
    words: ['used-cost', 'packs-cost', 'pack', 'kept', 'quarantine'],
  },
  prepare: {
    what: 'The days of the open job, counted back from the handover: what to order, grow, treat and build, and when.',
    acts: [
      { how: 'Tick a step', does: 'writes down the day, the person and the minutes' },
      { act: 'saveCalendar', does: 'saves the dates as a file for a calendar' },
      { act: 'onPaper', does: 'shows the prep plan as a paper' },
    ],
    words: ['handover', 'quarantine', 'treatment', 'commissioning-watch', 'check'],
  },
  cards: {
    what: 'The papers of the open job, in the order in which they are used, from the survey card to the care calendar.',
    acts: [
      { how: 'Open a card', does: 'shows it as it will be printed' },
      { act: 'print', does: 'puts it on paper or into a file' },
      { how: 'Take another job over the places', does: 'shows the cards of that job' },
    ],
    words: ['survey', 'treatment', 'commissioning-watch', 'handover'],
  },
  run: {
    what: 'One shopping run over the jobs whose deposit is in: whole packs, by supplier, with carriage.',
    acts: [
      { act: 'placeOrders', does: 'makes an order for each supplier, and says what is left out' },
      { how: 'Choose a material', does: 'shows its packs and who else sells it' },
      { act: 'saveCsv', does: 'saves the run as a list' },
    ],
    words: ['landed', 'carriage', 'pack', 'least-level', 'deposit'],
  },
  prices: {
    what: 'The prices that a job, or the whole workshop, waits for, most money at stake first. Guesses stand among them.',
    acts: [
      { how: 'Write a price', does: 'sets it from today; the price of a job rises at once' },
      { how: 'Paste a column', does: 'writes many prices, packs or suppliers in one step' },
      { act: 'confirmPrices', does: 'takes guesses as asked of their suppliers, so that a quote may be issued' },
    ],
    words: ['pack', 'landed'],
  },
  measures: {
    what: 'The measurements that a job, or the whole workshop, waits for, those first that most amounts and checks hang on.',
    acts: [
      { how: 'Write a figure', does: 'sets it in the tank book or in the job, wherever it belongs' },
      { how: 'Paste a column', does: 'writes many figures in one step; what is empty is left' },
      { act: 'find', does: 'goes to a measurement by its tank or its name' },
    ],
    words: ['dam', 'return', 'survey'],
  },
  'price-lists': {
    what: 'The price lists that suppliers send: which column is which, which article is what of ours, what each row changes.',
    acts: [
      { act: 'chooseFile', does: 'reads a list of any making; one can be dropped on the window or pasted, too' },
      { how: 'Write in a row', does: 'says what of ours it is, which pack, or that it is left out' },
      { act: 'importPrices', does: 'takes every row that is understood as one step, which Undo takes back' },
    ],
    words: ['pack'],
  },
  orders: {
    what: 'The orders with their suppliers: what is open, late, in, and what was paid.',
    acts: [
      { act: 'receive', does: 'takes what came into the store, at the price that was paid' },
      { act: 'orderForStore', does: 'orders packs that no job asked for' },
      { act: 'onPaper', does: 'shows the order as the supplier gets it' },
    ],
    words: ['lot', 'quarantine', 'landed', 'carriage'],
  },
  store: {
    what: 'What lies in the workshop: on hand, in quarantine, kept for jobs, on its way.',
    acts: [
      { act: 'putIn', does: 'writes down goods that came, and what they cost' },
      { act: 'keepForJob', does: 'gives a job a claim on them' },
      { how: 'Count it', does: 'corrects what the store thinks, with the reason' },
    ],
    words: ['lot', 'kept', 'quarantine', 'least-level'],
  },
  cultures: {
    what: 'The tubs of springtails, isopods and flies: what stands, what it may give, and what jobs will want.',
    acts: [
      { act: 'startTub', does: 'begins a tub and sets its days' },
      { how: 'Harvest', does: 'takes animals out, for a job or to sell' },
      { how: 'Count', does: 'writes down how many there are; the curve goes on from there' },
    ],
    words: ['tub', 'founders', 'springtails'],
  },
  recipe: {
    what: 'The house recipes, line by line: figures, rules, checks, needs and work, and what changed when.',
    acts: [
      { act: 'newRecipe', does: 'makes a recipe of answers: layers, depths, the mix of the soil, fittings' },
      { act: 'addLine', does: 'puts in a new line after the one where you are' },
      { act: 'findReplace', does: 'finds words in rules and notes, and replaces them in one act' },
    ],
    words: ['house-recipe', 'line', 'rule', 'use', 'shown-first', 'set-in', 'range', 'source', 'house-change'],
  },
  'tank-book': {
    what: 'The tanks you build in, with their inside measurements and prices.',
    acts: [
      { how: 'Add a tank', does: 'begins a row for it' },
      { how: 'Use these measurements', does: 'works the inside from the outside size and the glass' },
      { act: 'importList', does: 'takes many tanks in from a file' },
    ],
    words: ['outside-size', 'dam', 'return', 'pack'],
  },
  'material-book': {
    what: 'What you buy by volume, weight or count: packs, suppliers and dated prices.',
    acts: [
      { how: 'Add a material', does: 'begins a row for it' },
      { how: 'Set the price', does: 'gives a pack a new price from a day on' },
      { act: 'importPrices', does: 'leads to where the price list of a supplier is taken in' },
    ],
    words: ['pack', 'carriage', 'tax-class'],
  },
  'plant-book': {
    what: 'The plants you set: their class, what they bear, who sells them and for how much.',
    acts: [
      { how: 'Add a plant', does: 'begins a row for it' },
      { how: 'Set the price', does: 'gives a plant a new price from a day on' },
      { act: 'find', does: 'goes to a plant by its name' },
    ],
    words: ['quarantine', 'pack'],
  },
  'culture-book': {
    what: 'The kinds of springtails, isopods and flies you grow: how fast, how dense and at what warmth.',
    acts: [
      { how: 'Add a kind of culture', does: 'begins a row for it' },
      { how: 'Write in a cell', does: 'changes how the kind grows; every tub of it follows' },
      { act: 'find', does: 'goes to a kind by its name' },
    ],
    words: ['tub', 'founders', 'springtails'],
  },
  'animal-book': {
    what: 'The animals that tanks are built for, what each needs, and the batches that stand in quarantine.',
    acts: [
      { how: 'Write down a batch', does: 'notes animals that came, and from when their quarantine counts' },
      { how: 'Plan them in', does: 'says into which size of which job they go' },
      { act: 'importList', does: 'takes many kinds in from a file' },
    ],
    words: ['quarantine', 'check', 'source'],
  },
  'rate-book': {
    what: 'Hourly rates, margins, tax classes, suppliers and the days you are closed.',
    acts: [
      { how: 'Write in a cell', does: 'changes a rate for all quotes that are not issued yet' },
      { how: 'Raise its prices', does: 'raises all prices of a supplier and says which quotes that touches' },
      { act: 'importList', does: 'takes many suppliers in from a file' },
    ],
    words: ['margin', 'tax-class', 'carriage'],
  },
  'function-book': {
    what: 'The sums of the trade that rules can use, each with its limits, its source and worked examples.',
    acts: [
      { act: 'find', does: 'goes to a function by its name' },
      { act: 'tryIt', does: 'works an example that you can change' },
      { how: 'Copy as a rule', does: 'takes what you tried along, to paste into a rule' },
    ],
    words: ['rule', 'source'],
  },
  workshop: {
    what: 'The settings of the workshop: letterhead, money, days, units, and the file that holds it all.',
    acts: [
      { act: 'saveCopy', does: 'writes the book out as one whole file' },
      { act: 'openBook', does: 'goes on in another book' },
      { act: 'restoreBackup', does: 'shows what a day’s copy differs in, and goes back to it' },
    ],
    words: ['book', 'backup', 'deposit'],
  },
  keys: {
    what: 'Every key of the program in one table.',
    acts: [
      { how: 'Find a key', does: 'shows the keys that have these words' },
      { act: 'print', does: 'puts the table on paper' },
      { act: 'help', does: 'shows the keys of a place beside the work' },
    ],
    words: ['flag'],
  },
  about: {
    what: 'The version of the program, its licence, the packages it is built of, and where its files are.',
    acts: [
      { how: 'Read the version', does: 'says which program this is, for when you ask somebody' },
      { how: 'Find a package', does: 'shows its version and its licence' },
      { act: 'print', does: 'puts it on paper' },
    ],
    words: ['book', 'backup'],
  },
};
