/** Every kind of record; the order is the order in which they may refer to one another. */
export const kindNames = [
  'workshop',
  'supplier',
  'tank',
  'material',
  'pack',
  'packPrice',
  'plant',
  'cultureKind',
  'rate',
  'taxClass',
  'margin',
  'closedDay',
  'recipe',
  'line',
  'job',
  'size',
  'localValue',
  'stockEntry',
  'packChoice',
  'issuedQuote',
  'quoteLine',
  'treatmentBatch',
  'tub',
  'actual',
] as const;

export type KindName = (typeof kindNames)[number];
