import { describe, expect, test } from 'vitest';
import { treatmentCautions } from '#shared-calc/trade/heat/treatment-cautions.ts';

const leaves = { leavesL: 10, altitudeM: 650 } as const;

describe('treatmentCautions', () => {
  test('every caution says who decides', () => {
    const all = (['steam', 'boil', 'bake'] as const).flatMap((way) =>
      treatmentCautions({ ...leaves, way, aim: 'clean' }),
    );
    expect(all.filter(({ says, decides }) => says === '' || decides === '')).toEqual([]);
  });

  test('a bake is attended and the leaves are moistened before', () => {
    expect(treatmentCautions({ ...leaves, way: 'bake', aim: 'clean' })).toEqual([
      { says: 'Bake attended, at 120 C or less, the tray covered.', decides: 'Grower' },
      { says: 'Moisten the leaves 16 h before; dry ones need up to 20 C more.', decides: 'Grower' },
      { says: 'Clean is enough: a living tank is not sterile.', decides: 'Grower' },
      {
        says: 'Collect only where the owner of the land allows it and nothing is sprayed, away from roads; no oleander, yew, laurel cherry, walnut or conifer.',
        decides: 'Grower',
      },
    ]);
  });

  test.each([
    [
      'a gauge over the small vessels',
      { gaugeKpa: 120 },
      "Above the 15 psi class of small vessels; follow the vessel's plate.",
    ],
    ['a load over two thirds', { fill: 0.8 }, 'Fuller than two thirds: loose leaves block the vent.'],
    ['a sterile aim', {}, "Never promise 'sterile' on a quote."],
  ])('steam with %s is cautioned for it', (_, more, says) => {
    const cautions = treatmentCautions({ ...leaves, way: 'steam', aim: 'sterile', ...more });
    expect(cautions.map((caution) => caution.says)).toContain(says);
  });

  test('two thirds full at 15 psi has nothing more to be said of load and gauge', () => {
    const usual = treatmentCautions({ ...leaves, way: 'steam', aim: 'sterile' });
    expect(treatmentCautions({ ...leaves, way: 'steam', aim: 'sterile', fill: 2 / 3 })).toEqual(usual);
  });
});
