import { keysOf } from '#shared-calc/fields/keys-of.ts';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import type { WatchBand } from '#shared-calc/prepare/watch.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';

/** A band, as typed. */
export type BandTexts = Readonly<Record<keyof WatchBand, string>>;

export const bandFields = {
  lowestC: { name: 'Coldest', stored: 'degC' },
  highestC: { name: 'Hottest', stored: 'degC' },
  driest: { name: 'Driest', stored: '%' },
  dampest: { name: 'Dampest', stored: '%' },
} as const;
export const bandKeys = keysOf(bandFields);

export function bandTexts(band: WatchBand, decimalComma: boolean): BandTexts {
  const text = (figure: number) => (decimalComma ? String(figure).replace('.', ',') : String(figure));
  return {
    lowestC: text(band.lowestC),
    highestC: text(band.highestC),
    driest: text(band.driest),
    dampest: text(band.dampest),
  };
}

export function readBand(texts: BandTexts, decimalComma: boolean): Result<WatchBand, string> {
  const band = { lowestC: 0, highestC: 0, driest: 0, dampest: 0 };
  for (const key of bandKeys) {
    const read = said(readMeasure(texts[key], bandFields[key], { decimalComma }));
    if (!read.ok) return read;
    band[key] = read.value ?? 0;
  }
  const backward = band.lowestC > band.highestC || band.driest > band.dampest;
  return backward ? failed('The band runs backward: the least is over the most.') : ok(band);
}
