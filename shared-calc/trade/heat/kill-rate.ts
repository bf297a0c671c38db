import { firstRefusal } from '#shared-calc/trade/first-refusal.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

export const STEP_ABOVE_ZERO = 'The ten-fold step (z) must be above zero; moist spores have about 10 K.';
const STEPS_APART = 'The temperatures are over a hundred ten-fold steps (z) apart; check them and the step.';

const MOST_STEPS = 100;

/** Refuses a step of zero or less, and temperatures so far apart that the result would have a hundred digits. */
export function refuseSteps(degC: number, reference: number, step: number): { readonly refused: string } | undefined {
  return firstRefusal([
    [step <= 0, STEP_ABOVE_ZERO],
    [Math.abs(degC - reference) > MOST_STEPS * step, STEPS_APART],
  ]);
}

/** Minutes at the reference that equal one minute at this temperature: 10 ^ ((degC - reference) / z). */
export function killRateAt(degC: number, reference: number, step: number): number {
  return 10 ** ((degC - reference) / step);
}

/** Minutes at the reference that equal one minute at a temperature. Refuses a z of zero or less. */
export const killRate = tradeFunction({
  name: 'kill_rate',
  title: 'Kill rate',
  group: 'heat',
  args: [
    { name: 'temperature', takes: 'degC', low: 0, high: 200, says: 'of the core' },
    { name: 'reference', takes: 'degC', low: 0, high: 200, says: 'temperature the time is counted at' },
    { name: 'step', takes: 'K', low: 4, high: 40, says: 'z: warmer by this kills ten times as fast' },
  ],
  gives: 'number',
  sum: '10 ^ ((temperature - reference) / step)',
  help: 'What a minute at this temperature is worth in minutes at the reference. 121, 121.1 and 121.11 are all in use: say which.',
  examples: [
    { rule: 'kill_rate(119.763 degC, 121 degC, 10 K)', gives: '0.752' },
    { rule: 'kill_rate(121 degC, 121.1 degC, 10 K)', gives: '0.97724' },
    { rule: 'kill_rate(111 degC, 121 degC, 10 K)', gives: '0.1' },
  ],
  source: 'definition of D and z',
  cautions: ['coreProbe'],
  compute: ({ temperature, reference, step }) =>
    refuseSteps(temperature, reference, step) ?? killRateAt(temperature, reference, step),
});
