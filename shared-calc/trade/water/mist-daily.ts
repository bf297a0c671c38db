import { belowZero, notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Millilitres from the nozzles per day; flow grows with the square root of the pressure (Bernoulli). */
export const mistDaily = tradeFunction({
  name: 'mist_daily',
  title: 'Mist a day',
  group: 'water',
  args: [
    { name: 'nozzles', takes: 'each', low: 0, high: 10, says: 'nozzles' },
    { name: 'flow', takes: 'mL/min', low: 10, high: 500, says: 'flow of one nozzle at its rated pressure' },
    { name: 'rated', takes: 'kPa', low: 50, high: 1500, says: 'rated pressure' },
    { name: 'pump', takes: 'kPa', low: 50, high: 1500, says: 'pressure of the pump' },
    { name: 'time', takes: 's', low: 0, high: 600, says: 'length of one mist cycle' },
    { name: 'cycles', takes: 'each/d', low: 0, high: 48, says: 'mist cycles a day' },
  ],
  gives: 'mL/d',
  sum: 'nozzles x flow x root(pump / rated) x seconds / 60 x cycles',
  help: 'Water that the misting brings in each day. What does not leave as vapour ends in the drainage.',
  examples: [
    { rule: 'mist_daily(2, 90 mL/min, 550 kPa, 550 kPa, 15 s, 3 each/d)', gives: '135 mL/d' },
    { rule: 'mist_daily(2, 90 mL/min, 550 kPa, 400 kPa, 15 s, 3 each/d)', gives: '115.13 mL/d' },
  ],
  source: 'flow by the root of pressure: Bernoulli; 90 mL/min from memory',
  cautions: ['mistPump'],
  compute: ({ nozzles, flow, rated, pump, time, cycles }) =>
    belowZero({ Nozzles: nozzles, Flow: flow, 'Pump pressure': pump, 'Mist time': time, 'Mist cycles': cycles }) ??
    notAboveZero({ 'Rated pressure': rated }) ??
    nozzles * flow * Math.sqrt(pump / rated) * (time / 60) * cycles,
});
