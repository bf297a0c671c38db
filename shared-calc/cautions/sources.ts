export interface Published {
  readonly says: string;
  readonly at: `https://${string}`;
}

export const PRACTICE = 'common practice, no source';
export const MEMORY = 'from memory';

/** Where a caution comes from: a publication with its address, or a mark that there is none at hand. */
export type CautionSource = typeof PRACTICE | typeof MEMORY | Published;

/** Centers for Disease Control, Healthy Pets, reptiles and amphibians: who should not be near reptiles and amphibians, and hygiene around them. */
export const CDC: Published = {
  says: 'CDC',
  at: 'https://www.cdc.gov/healthy-pets/',
};

/** Trade in protected kinds, appendices I to III. */
export const CITES: Published = { says: 'CITES', at: 'https://cites.org/eng/app/appendices.php' };

/** Respirable crystalline silica. */
export const SILICA: Published = {
  says: '29 CFR 1910.1053',
  at: 'https://www.ecfr.gov/current/title-29/section-1910.1053',
};

/** Using and caring for your pressure canner: venting, opening, dial gauges, safety plugs. */
export const PRESSURE_CANNER: Published = {
  says: 'PNW 421',
  at: 'https://catalog.extension.oregonstate.edu/pnw421',
};

/** Parks and forests of the United States. */
export const COLLECTING: Published = {
  says: '36 CFR 2.1 and 223.239',
  at: 'https://www.ecfr.gov/current/title-36',
};
