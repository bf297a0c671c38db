import { createHash, webcrypto } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { quoteSeals, type Seal } from '#renderer/places/quotes/quote-seals.ts';
import type { IssuedQuote } from '#shared-calc/records/records.ts';

const body = '{"number":"Q-0001","client":"Brückenheim, 12 m²"}';
const quote: IssuedQuote = {
  id: 'Q-0001A',
  number: 'Q-0001',
  revision: 'A',
  issuedOn: '2027-03-10',
  body,
  sha256: createHash('sha256').update(body, 'utf8').digest('hex'),
};

function sealOf(of: IssuedQuote, subtle = webcrypto.subtle as SubtleCrypto | undefined): Promise<Seal> {
  const seal = quoteSeals(subtle)(of);
  return new Promise((found) => {
    seal.subscribe((is) => {
      if (is !== 'looked at') found(is);
    });
  });
}

describe('quoteSeals', () => {
  test('a quote as it was issued holds', async () => {
    expect(await sealOf(quote)).toBe('holds');
  });

  test('one digit otherwise and it is named as altered', async () => {
    expect(await sealOf({ ...quote, body: body.replace('12', '13') })).toBe('broken');
  });

  test('where nothing can be worked it is not called good', async () => {
    const seal = quoteSeals(undefined)(quote);
    await new Promise((later) => setTimeout(later, 0));
    expect(seal.value).toBe('cannot be looked at here');
  });
});
