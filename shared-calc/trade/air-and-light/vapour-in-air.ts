import { firstRefusal } from '#shared-calc/trade/first-refusal.ts';
import { outsideShare } from '#shared-calc/trade/refuse-share.ts';
import { tradeFunction, type Answer } from '#shared-calc/trade/trade-function.ts';

const LEAST_C = -100; // far below the range of the formula's fit (-35 to 35 degC)

/** Grams of water vapour in a cubic metre of air; humidity as a share. */
export function vapourGrams(degC: number, humidity: number): Answer {
  return (
    outsideShare({ Humidity: humidity }) ??
    firstRefusal([[degC <= LEAST_C, `The vapour formula needs air above ${LEAST_C} C.`]]) ??
    (saturatedHectopascals(degC) * humidity * 100 * 2.1674) / (273.15 + degC)
  );
}

/** hPa of saturated vapour over water. */
export function saturatedHectopascals(degC: number): number {
  return 6.112 * Math.exp((17.67 * degC) / (degC + 243.5));
}

/** g of water in a cubic metre of air. Refuses a humidity outside 0 to 1. */
export const vapourInAir = tradeFunction({
  name: 'vapour_in_air',
  title: 'Vapour in air',
  group: 'air and light',
  args: [
    { name: 'temperature', takes: 'degC', low: 5, high: 40, says: 'of the air' },
    { name: 'humidity', takes: 'share', low: 0, high: 1, says: 'relative' },
  ],
  gives: 'g/m3',
  sum: '6.112 x e ^ (17.67 x degC / (degC + 243.5)) x humidity in % x 2.1674 / (273.15 + degC)',
  help: 'How much water the air carries.',
  examples: [
    { rule: 'vapour_in_air(24 degC, 90 %)', gives: '19.58 g/m3' },
    { rule: 'vapour_in_air(21 degC, 45 %)', gives: '8.24 g/m3' },
  ],
  source: 'Bolton 1980 form of the Magnus equation',
  compute: ({ temperature, humidity }) => vapourGrams(temperature, humidity),
});
