import { steamTemperatureC } from './steam-temp.ts';
import { LEAST_BOIL_C } from '#shared-calc/trade/heat-targets.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** degC at which water boils in an open pot at a height: the steam temperature at gauge 0. */
export const boilingPoint = tradeFunction({
  name: 'boiling_point',
  title: 'Boiling point',
  group: 'heat',
  args: [{ name: 'altitude', takes: 'm', low: -400, high: 5000, says: 'height above the sea' }],
  gives: 'degC',
  sum: 'boiling temperature of water at the air pressure',
  help: `How hot an open pot gets. Boiling leaves asks for ${LEAST_BOIL_C} degC or more.`,
  examples: [
    { rule: 'boiling_point(0 m)', gives: '99.974 degC' },
    { rule: 'boiling_point(1500 m)', gives: '94.983 degC' },
    { rule: 'boiling_point(650 m)', gives: '97.81 degC' },
  ],
  source: 'IAPWS R7-97(2012), region 4',
  cautions: ['boilingWater'],
  compute: ({ altitude }) => steamTemperatureC(altitude, 0),
});
