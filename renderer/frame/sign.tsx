import css from './sign.module.css';

/** Drawn signs; each is hidden from screen readers, which read the word next to it. */
export const signs = [
  'fold',
  'stop',
  'watch',
  'advice',
  'need',
  'range',
  'wait',
  'old',
  'loop',
  'issued',
  'find',
  'step',
  'more',
  'measured',
  'supplier',
  'published',
  'practice',
  'memory',
  'house',
  'unknown',
  'done',
] as const;

export type SignName = (typeof signs)[number];

export function Sign({ name }: { readonly name: SignName }) {
  return (
    <svg class={css['sign']} aria-hidden="true" focusable="false">
      <use href={`#s-${name}`} />
    </svg>
  );
}
