export interface Published {
  readonly says: string;
  readonly at: `https://${string}`;
}

export const PRACTICE = 'common practice, no source';
export const MEMORY = 'from memory';

/** Where a caution comes from: a publication with its address, or a mark that there is none at hand. */
export type CautionSource = typeof PRACTICE | typeof MEMORY | Published;

/** Public health: who should not be near reptiles and amphibians, and hygiene around them. */
export const CDC: Published = {
  says: 'CDC, Healthy Pets, reptiles and amphibians',
  at: 'https://www.cdc.gov/healthy-pets/',
};

export const CITES: Published = { says: 'CITES, appendices I to III', at: 'https://cites.org/eng/app/appendices.php' };

export const SILICA: Published = {
  says: '29 CFR 1910.1053, respirable crystalline silica',
  at: 'https://www.ecfr.gov/current/title-29/section-1910.1053',
};

/** Pressure canners: venting, opening, dial gauges, safety plugs. */
export const PRESSURE_CANNER: Published = {
  says: 'PNW 421, using and caring for your pressure canner',
  at: 'https://catalog.extension.oregonstate.edu/pnw421',
};

export const COLLECTING: Published = {
  says: '36 CFR 2.1 and 223.239, parks and forests of the United States',
  at: 'https://www.ecfr.gov/current/title-36',
};
