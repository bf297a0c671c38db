/** Every kind of record, in reference order: a kind refers to earlier ones. */
export const kindNames = [
  'workshop',
  'supplier',
  'tank',
  'material',
  'plant',
  'pack',
  'packPrice',
  'cultureKind',
  'animalKind',
  'rate',
  'taxClass',
  'margin',
  'closedDay',
  'recipe',
  'line',
  'difference',
  'job',
  'size',
  'localValue',
  'packChoice',
  'issuedQuote',
  'quoteLine',
  'treatmentBatch',
  'tub',
  'order',
  'move',
  'animalBatch',
  'placement',
  'actual',
  'done',
  'houseChange',
  'tableView',
] as const;

export type KindName = (typeof kindNames)[number];

const kindWords: Readonly<Partial<Record<KindName, string>>> = {
  packPrice: 'price',
  cultureKind: 'culture kind',
  animalKind: 'animal kind',
  taxClass: 'tax class',
  closedDay: 'closed day',
  localValue: 'local value',
  packChoice: 'choice of packs',
  issuedQuote: 'issued quote',
  quoteLine: 'quote line',
  treatmentBatch: 'treatment batch',
  animalBatch: 'batch of animals',
  placement: 'placing of animals',
  done: 'thing done',
  houseChange: 'house change',
  tableView: 'view of a table',
};

/** The words for a kind of record: "price", "stock entry". */
export function wordsOfKind(kind: KindName): string {
  return kindWords[kind] ?? kind;
}
