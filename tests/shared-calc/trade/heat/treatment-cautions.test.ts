import { describe, expect, test } from 'vitest';
import { leafTreatTime } from '#shared-calc/trade/heat/leaf-treat-time.ts';
import { treatmentCautions } from '#shared-calc/trade/heat/treatment-cautions.ts';

const leaves = { leavesL: 10, altitudeM: 650 } as const;

describe('treatmentCautions', () => {
  test.each([
    ['steam', ['treatingHeat', 'steamVent', 'steamOpening', 'steamVessel', 'steamLoad']],
    ['boil', ['boilingWater', 'hotDraining']],
    ['bake', ['ovenAttended', 'ovenMoist']],
  ] as const)('%s has its own, then what leaves are and where they come from', (way, own) => {
    expect(treatmentCautions({ way, aim: 'clean' }).map(({ id }) => id)).toEqual([
      ...own,
      'cleanIsEnough',
      'collecting',
      'collectedKinds',
    ]);
  });

  test('a bake is attended and the leaves are moistened before', () => {
    const said = treatmentCautions({ way: 'bake', aim: 'clean' }).slice(0, 2);
    expect(said.map(({ says, decides, source }) => [says, decides, source])).toEqual([
      [
        'Bake attended, at 120 degC or less, the tray covered and off the heating elements, children out of the room; oven mitts.',
        'Grower',
        'from memory',
      ],
      ['Moisten the leaves 16 h before; dry ones need up to 20 K more.', 'Grower', 'from memory'],
    ]);
  });

  test('boiling is cautioned for scalds, the lid, the hot water and the pot', () => {
    const said = treatmentCautions({ way: 'boil', aim: 'clean' }).map(({ says }) => says);
    expect(said[0]).toMatch(/scalds.*lid lifted away from your face.*children out of the room/);
    expect(said[1]).toMatch(/only when it is cold.*before you pour/);
  });

  test('a sterile aim is never promised', () => {
    expect(treatmentCautions({ way: 'steam', aim: 'sterile' }).map(({ id }) => id)).toContain('neverPromise');
  });
});

describe('the warnings of a steam vessel', () => {
  const warningsOf = (more: object) => {
    const plan = leafTreatTime({ ...leaves, way: 'steam', aim: 'clean', steamWaterL: 6, steamPowerKw: 1, ...more });
    return 'refused' in plan ? [plan.refused] : plan.warnings;
  };

  test.each([
    [
      'a gauge over the small vessels',
      { gaugeKpa: 120 },
      'Above the 15 psi class of small vessels: only as the maker of the vessel says.',
    ],
    ['a load over two thirds', { fill: 0.8 }, 'Fuller than two thirds: loose leaves block the vent.'],
  ])('%s', (_, more, says) => {
    expect(warningsOf(more)).toEqual([{ says, decides: 'Whoever services the vessel' }]);
  });

  test('two thirds full at 15 psi there is nothing to warn of', () => {
    expect(warningsOf({ fill: 2 / 3 })).toEqual([]);
  });
});
