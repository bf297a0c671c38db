import type { WatchBand } from '#shared-calc/prepare/watch.ts';
import type { SizeFigures } from './size-figures.ts';

/** Either side of the humidity that a tank is kept at, where the recipe has no band. Common practice, no source. */
const EITHER_SIDE = 10;
const usual: WatchBand = { lowestC: 18, highestC: 27, driest: 60, dampest: 100 };

/** What a size's animals stand, from its recipe; the usual where it says nothing. */
export function watchBand({ number }: SizeFigures): WatchBand {
  const kept = number('tank_humidity', '%');
  const around = (step: number) => (kept === undefined ? undefined : Math.min(100, Math.max(0, kept + step)));
  return {
    lowestC: number('species_floor', 'degC') ?? usual.lowestC,
    highestC: number('species_ceiling', 'degC') ?? usual.highestC,
    driest: number('band_low', '%') ?? around(-EITHER_SIDE) ?? usual.driest,
    dampest: number('band_high', '%') ?? around(EITHER_SIDE) ?? usual.dampest,
  };
}
