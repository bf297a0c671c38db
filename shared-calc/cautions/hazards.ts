/** What can hurt a person or an animal during an act. Every act declares its own; a caution says which it is against. */
export const hazards = [
  'animals',
  'boiling water',
  'cleaning agents',
  'drilling and sanding',
  'dust',
  'electricity near water',
  'heat',
  'heavy pieces',
  'lifting',
  'permits',
  'road',
  'sealant',
  'sharp edges',
  'small children',
  'standing water',
  'steam under pressure',
  'wild-collected',
] as const;

export type Hazard = (typeof hazards)[number];
