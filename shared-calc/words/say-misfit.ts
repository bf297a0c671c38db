import type { Misfit } from '#shared-calc/records/misfit.ts';
import { sayByKind, type Sayings } from './say-by-kind.ts';

const sayings: Sayings<Misfit> = {
  over: ({ what, mm, most }) =>
    what === 'dam'
      ? `The dam is ${mm} mm and the tank only ${most} mm high inside.`
      : `The side return is ${mm} mm and the side only ${most} mm.`,
  'vent-over-height': () => 'The front vent is as high as the tank.',
  'bow-over-depth': () => 'The bow is deeper than the tank.',
  'not-of-shape': ({ shape, measure }) => `A ${shape} has no ${measure.toLowerCase()}.`,
  'as-deep-as-long': ({ shape }) => `A ${shape} is as deep as it is long; write its length.`,
  backward: ({ of, from, to }) =>
    `${of === 'light' ? 'Light from' : 'From'} ${from} to ${to}${of === 'warmth' ? ' °C' : ''} runs backward.`,
  'not-in-order': ({ low, high, mayEqual }) =>
    `${low.called}, ${low.is}, ${mayEqual ? 'may not lie above' : 'must lie below'} ${high.called.toLowerCase()}, ${high.is}.`,
  'harvest-over-capacity': ({ animals, capacity }) =>
    `A harvest of ${animals} is more than the ${capacity} a tub holds.`,
  'flies-without-days': () => 'Flies are kept for their productive days: write those first.',
  'same-code': ({ by }) => `That is the code of a ${by}.`,
  'own-ancestor': ({ recipe, parent }) => `${recipe} cannot inherit from ${parent}: ${parent} inherits from it.`,
  'family-too-deep': ({ recipe, most }) => `${recipe} would have more than ${most} parents above it.`,
  'not-hourly': ({ rate }) => `${rate} is not paid by the hour.`,
  'unit-counted': ({ unit }) =>
    `Its packs or stock are counted in ${unit}, which would no longer be right. Make another material of it.`,
};

export function sayMisfit(fault: Misfit): string {
  return sayByKind(sayings, fault);
}

export function isMisfit(fault: { readonly kind: string }): fault is Misfit {
  return Object.hasOwn(sayings, fault.kind);
}
