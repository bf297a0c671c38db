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
] as const;

export type SignName = (typeof signs)[number];

interface SignLook {
  readonly name: SignName;
  readonly look?: 'sign' | 'chevron';
}

export function Sign({ name, look = 'sign' }: SignLook) {
  return (
    <svg class={look} aria-hidden="true" focusable="false">
      <use href={`#s-${name}`} />
    </svg>
  );
}
