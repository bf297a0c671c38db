/** Kinds of record in the plural, as users call them. */
const words: Readonly<Record<string, string>> = {
  workshop: 'the workshop',
  supplier: 'suppliers',
  tank: 'tanks',
  material: 'materials',
  pack: 'packs',
  packPrice: 'prices',
  plant: 'plants',
  cultureKind: 'kinds of culture',
  animalKind: 'kinds of animal',
  rate: 'rates',
  taxClass: 'tax classes',
  margin: 'margins',
  closedDay: 'closed days',
  recipe: 'house recipes',
  line: 'lines of recipes',
  job: 'jobs',
  size: 'sizes',
  localValue: 'local values',
  packChoice: 'packs chosen by hand',
  issuedQuote: 'issued quotes',
  quoteLine: 'lines for a job alone',
  treatmentBatch: 'treatments',
  tub: 'tubs',
  order: 'orders',
  move: 'moves of the store',
  animalBatch: 'batches of animals',
  placement: 'placings of animals',
  actual: 'things measured',
  done: 'things done',
  houseChange: 'house changes',
  tableView: 'views of tables',
};

/** A kind of record in words; a kind from a newer program keeps its own name. */
export function kindWords(kind: string): string {
  return words[kind] ?? kind;
}
