import type { ReadonlySignal } from '@preact/signals';
import { Flag } from '#renderer/kit/flag.tsx';
import type { Seal } from './quote-seals.ts';

const words: Readonly<Record<Seal, string>> = {
  'looked at': 'being looked at',
  holds: 'as it was issued',
  broken: 'altered since it was issued',
  'cannot be looked at here': 'not looked at here',
};

/** Whether an issued quote is unchanged, as a sign and a word. */
export function SealSign({ seal }: { readonly seal: ReadonlySignal<Seal> }) {
  const is = seal.value;
  return (
    <Flag state={is === 'broken' ? 'stop' : 'advice'} sign={is === 'broken' ? 'stop' : 'issued'}>
      {words[is]}
    </Flag>
  );
}
