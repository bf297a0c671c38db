import { signal, type ReadonlySignal } from '@preact/signals';
import type { IssuedQuote } from '#shared-calc/records/records.ts';

/** Whether an issued quote is unchanged since it was issued. */
export type Seal = 'looked at' | 'holds' | 'broken' | 'cannot be looked at here';

/** Checks the seal of issued quotes, each once: compares its SHA-256 with the one stored when it was issued. */
export function quoteSeals(
  subtle: Pick<SubtleCrypto, 'digest'> | undefined,
): (quote: IssuedQuote) => ReadonlySignal<Seal> {
  const known = new WeakMap<IssuedQuote, ReadonlySignal<Seal>>();
  return (quote) => {
    const before = known.get(quote);
    if (before) return before;
    const seal = signal<Seal>('looked at');
    known.set(quote, seal);
    sealOf(quote, subtle).then(
      (found) => (seal.value = found),
      () => (seal.value = 'cannot be looked at here'),
    );
    return seal;
  };
}

async function sealOf({ body, sha256 }: IssuedQuote, subtle: Pick<SubtleCrypto, 'digest'> | undefined): Promise<Seal> {
  if (!subtle) return 'cannot be looked at here';
  const hash = await subtle.digest('SHA-256', new TextEncoder().encode(body));
  const letters = [...new Uint8Array(hash)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return letters === sha256 ? 'holds' : 'broken';
}
