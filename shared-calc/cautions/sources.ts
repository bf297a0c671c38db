export interface Published {
  /** The citation, with what of it nobody has looked up. */
  readonly says: string;
  /** From memory: none of the addresses was looked up. */
  readonly at: `https://${string}`;
}

export const PRACTICE = 'common practice, no source';
export const MEMORY = 'from memory';

/** Where a caution comes from: a publication with its address, or a mark that there is none at hand. */
export type CautionSource = typeof PRACTICE | typeof MEMORY | Published;

/**
 * Centers for Disease Control, Healthy Pets: who should not be near reptiles and amphibians, and hygiene around them. Seen
 * in a copy of its one-page sheet.
 */
export const CDC: Published = {
  says: 'CDC',
  at: 'https://www.cdc.gov/healthy-pets/',
};

/** Trade in protected kinds, appendices I to III. Not looked up. */
export const CITES: Published = {
  says: 'CITES, from memory, not looked up',
  at: 'https://cites.org/eng/app/appendices.php',
};

/** Respirable crystalline silica. Seen in pages that quote it. */
export const SILICA: Published = {
  says: '29 CFR 1910.1053',
  at: 'https://www.ecfr.gov/current/title-29/section-1910.1053',
};

/** Using and caring for your pressure canner: venting, opening, dial gauges, safety plugs. Seen. */
export const PRESSURE_CANNER: Published = {
  says: 'PNW 421',
  at: 'https://catalog.extension.oregonstate.edu/pnw421',
};

/** National forests of the United States, 223.239: seen. National parks, 2.1: not looked up. */
export const COLLECTING: Published = {
  says: '36 CFR 223.239; 2.1 from memory, not looked up',
  at: 'https://www.ecfr.gov/current/title-36',
};
