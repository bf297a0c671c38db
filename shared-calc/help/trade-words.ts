import type { Word } from './word.ts';

/** Money, buying, growing and the way of a job. */
export const tradeWords = {
  'used-cost': {
    word: 'used cost',
    says: 'Materials cost what goes into the tank: 9 litres out of a bag of 45 cost a fifth of the bag. The rest of the bag is thought to be used for other jobs.',
    picture: 'packs',
  },
  'packs-cost': {
    word: 'packs cost',
    says: 'Materials cost every pack that must be bought for the job, with what is left over. Right for what no other job will use.',
    picture: 'packs',
  },
  pack: {
    word: 'pack',
    says: 'How a material is sold: a bag of 45 litres, a box of 100 grams. A pack without a price is not on sale.',
    picture: 'packs',
  },
  landed: {
    word: 'landed',
    says: 'What goods cost once they are here: the price of the packs with carriage.',
  },
  carriage: {
    word: 'carriage',
    says: 'What a supplier asks for bringing the goods. From some sum on it may be free, and the shopping run says when one pack more pays for itself.',
  },
  margin: {
    word: 'margin',
    says: 'The part of the price, before tax, that is left after cost. Each group of the quote has its own, in the rate book.',
  },
  'tax-class': {
    word: 'tax class',
    says: 'A share of tax under a name. Each line of a quote belongs to one, and the quote sums each by itself.',
  },
  deposit: {
    word: 'deposit',
    says: 'The share of the price that is paid before anything is ordered. Cut glass and plants are not ordered without it.',
  },
  revision: {
    word: 'revision',
    says: 'One issued state of a quote, named by a letter: Q-0027 A, then B. An issued one never changes.',
  },
  seal: {
    word: 'seal',
    says: 'A check number over all that an issued quote holds. As long as it fits, nothing in the quote has been altered since.',
  },
  'job-state': {
    word: 'state of a job',
    says: 'Where a job stands: enquiry, surveyed, quoted, accepted, deposit in, ordered, ready to build, built, watching, handed over, in care, closed. Each step says what stands against it.',
  },
  survey: {
    word: 'survey',
    says: 'What was asked at the place: who comes near the tank, the shelf, the way in, sun and room temperatures. What nobody asked is {not-known}.',
  },
  lot: {
    word: 'lot',
    says: 'What came in at one time of one material, with what was paid and its best-before day.',
  },
  kept: {
    word: 'kept for a job',
    says: 'Goods in the store that one job has a claim on. Other jobs do not count on them.',
  },
  quarantine: {
    word: 'quarantine',
    says: 'The days that new plants or animals stand apart before they go in. They are in the house but not to be used yet.',
  },
  'least-level': {
    word: 'least level',
    says: 'The least of a material that should lie in the store. What is missing to it is offered on the shopping run.',
  },
  tub: {
    word: 'tub',
    says: 'One box in which springtails, isopods or flies are grown. It grows by its curve, and says what it may give without harm.',
  },
  founders: {
    word: 'starter animals',
    says: 'The animals a {tub} is begun with.',
  },
  treatment: {
    word: 'clean and sterile',
    says: 'Leaves are treated by heat. Clean is enough: a living tank is not sterile, and a bake does not sterilise. What aims at more needs steam under pressure and a core probe.',
  },
  'commissioning-watch': {
    word: 'watch readings',
    says: 'Readings of temperature and humidity for one to three days with the lamps on, before animals go in. They are signed.',
  },
  handover: {
    word: 'handover',
    says: 'The day the tank is given to the client, with a card of how to keep it. The plan counts back from it.',
  },
  book: {
    word: 'book',
    says: 'The one file that holds a workshop: recipes, tanks, prices, jobs, quotes, store. Its name ends in .loamwright.',
  },
  backup: {
    word: 'backup',
    says: 'A copy of the book of one day, beside it; the last 14 days are kept. *Restore a backup* shows first what would change, and Undo takes it back.',
  },
} as const satisfies Readonly<Record<string, Word>>;
