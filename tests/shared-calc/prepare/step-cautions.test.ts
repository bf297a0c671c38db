import { describe, expect, test } from 'vitest';
import { stepCautions } from '#shared-calc/prepare/cautions.ts';
import { cautionsByCard } from '#tests/shared-calc/papers/all-cards.ts';

/** The cards that the person who does the act holds. */
const where: Readonly<Record<string, readonly string[]>> = {
  enquiry: ['survey', 'animals in', 'handover'],
  'animal choice': ['survey', 'animals in'],
  survey: ['survey', 'build'],
  lifting: ['survey', 'prep', 'build', 'handover'],
  electrics: ['survey', 'prep', 'build', 'watch', 'handover'],
  tank: ['prep', 'build'],
  'foam and sealant': ['prep', 'build'],
  'clay, charcoal, bark dust': ['prep', 'build'],
  'moss, bark, leaf mould': ['prep', 'build'],
  coir: ['prep', 'build'],
  drainage: ['build', 'watch', 'handover', 'care'],
  'drain tap': ['build'],
  mix: ['prep', 'build'],
  'leaves and wood': ['prep', 'treatment', 'build', 'care'],
  steam: ['treatment'],
  'sterile or clean': ['prep', 'treatment', 'build'],
  plants: ['prep', 'build'],
  water: ['build', 'handover'],
  reservoir: ['build', 'handover', 'care'],
  'mist pump': ['build'],
  'vents, doors, cables': ['build', 'handover'],
  'cover glass': ['prep', 'build', 'handover'],
  'cover glass, screen removed': ['build'],
  lamp: ['build', 'handover'],
  microfauna: ['prep', 'build', 'handover'],
  heat: ['survey', 'watch', 'handover'],
  cold: ['survey', 'watch', 'handover'],
  'animals in': ['prep', 'animals in'],
  quarantine: ['animals in'],
  feeding: ['animals in', 'handover'],
  hands: ['build', 'animals in', 'handover', 'care'],
  'sprays near the tank': ['handover'],
  'public place': ['survey', 'build', 'handover'],
  transport: ['prep', 'build', 'animals in'],
  service: ['care'],
  'disease waste': ['handover', 'care'],
  death: ['handover'],
};

describe('cautions on the cards', () => {
  const cards = cautionsByCard();

  test('every caution that there is has its place here', () => {
    expect(Object.keys(where).toSorted()).toEqual(stepCautions.map(({ step }) => step).toSorted());
  });

  test.each(Object.entries(where))('%s stands on the card where the act happens', (step, wanted) => {
    const found = Object.entries(cards)
      .filter(([, steps]) => steps.has(step))
      .map(([card]) => card);
    expect(found).toEqual(wanted);
  });

  test('each of them names who decides', () => {
    expect(stepCautions.filter(({ decides }) => decides.trim() === '')).toEqual([]);
  });

  test('Basic has no pump, no can and no tap: their cautions do not crowd its cards', () => {
    const basic = cautionsByCard({ kit: 'basic', screen_under_lamps: 'yes' });
    const left = ['mist pump', 'reservoir', 'drain tap', 'public place', 'cover glass, screen removed'];
    const of = [...(basic['build'] ?? []), ...(basic['handover'] ?? []), ...(basic['care'] ?? [])];
    expect(of.filter((step) => left.includes(step))).toEqual([]);
  });

  test('a figure that is missing keeps its caution: nobody knows yet whether there is a pump', () => {
    const unknown = cautionsByCard({ kit: '' });
    expect(unknown['build']?.has('mist pump')).toBe(true);
  });
});
