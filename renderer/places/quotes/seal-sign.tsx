import type { ReadonlySignal } from '@preact/signals';
import { Sign } from '#renderer/frame/sign.tsx';
import type { Seal } from './quote-seals.ts';

const words: Readonly<Record<Seal, string>> = {
  'looked at': 'being looked at',
  holds: 'as it was issued',
  broken: 'altered since it was issued',
  'cannot be looked at here': 'not looked at here',
};

/** Whether an issued quote is still what was issued, in a sign and a word. */
export function SealSign({ seal }: { readonly seal: ReadonlySignal<Seal> }) {
  const is = seal.value;
  return (
    <span class="flag" data-state={is === 'broken' ? 'stop' : 'advice'}>
      <Sign name={is === 'broken' ? 'stop' : 'issued'} />
      {words[is]}
    </span>
  );
}
