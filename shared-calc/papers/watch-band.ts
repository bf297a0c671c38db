import type { WatchBand } from '#shared-calc/prepare/watch.ts';
import type { SizeFigures } from './size-figures.ts';

/** Below and above the humidity that a tank is kept at, where the recipe has no band: 75 to 95 % of 90. Common practice, no source. */
const BELOW = 15;
const ABOVE = 5;
const usual: WatchBand = { lowestC: 18, highestC: 27, driest: 60, dampest: 100 };

/** What a size's animals stand, from its recipe; the usual where it says nothing. */
export function watchBand({ number }: SizeFigures): WatchBand {
  const kept = number('tank_humidity', '%');
  const around = (step: number) => (kept === undefined ? undefined : Math.min(100, Math.max(0, kept + step)));
  return {
    lowestC: number('species_floor', 'degC') ?? usual.lowestC,
    highestC: number('species_ceiling', 'degC') ?? usual.highestC,
    driest: number('band_low', '%') ?? around(-BELOW) ?? usual.driest,
    dampest: number('band_high', '%') ?? around(ABOVE) ?? usual.dampest,
  };
}
