import { belowZero, notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** The share of one person's limit that each person of a team of 1, 2, 3 and 4 may lift. */
const teamFactors = [1, 0.667, 0.5, 0.5] as const;
const DO_NOT_LIFT = 'Do not lift. Build in place or use a trolley.';

/** The smallest team that may lift a mass, up to 4; 0 means 'do not lift', with a warning. */
export const liftCrew = tradeFunction({
  name: 'lift_crew',
  title: 'Lift crew',
  group: 'mass',
  args: [
    { name: 'mass', takes: 'kg', low: 0, high: 400, says: 'to be carried' },
    {
      name: 'limit',
      takes: 'kg',
      low: 5,
      high: 40,
      otherwise: 25,
      says: 'for one person, at knuckle height close to the body',
    },
  ],
  gives: 'each',
  sum: 'least people with people x limit x (1, 0.667, 0.5, 0.5 for 1, 2, 3, 4) >= mass; 0 where 4 are too few',
  help: 'How many people carry it. 0 means do not lift: build in place or use a trolley.',
  examples: [
    { rule: 'lift_crew(32.2 kg, 25 kg)', gives: '2 each' },
    { rule: 'lift_crew(83.2 kg, 25 kg)', gives: '0 each' },
  ],
  source: 'guide figures of 25 and 16 kg, from memory',
  cautions: ['lifting', 'glassEdges'],
  compute: ({ mass, limit }) =>
    belowZero({ Mass: mass }) ?? notAboveZero({ 'The limit': limit }) ?? leastTeam(mass, limit),
  decides: 'Crew leader',
  warn: (_, people) => (people === 0 ? DO_NOT_LIFT : undefined),
});

function leastTeam(mass: number, limit: number): number {
  return teamFactors.findIndex((factor, at) => (at + 1) * limit * factor >= mass - 1e-9) + 1;
}
