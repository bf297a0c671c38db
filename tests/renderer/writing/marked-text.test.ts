import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { markedText } from '#renderer/writing/marked-text.ts';

describe('markedText', () => {
  test('a fault across two names marks its part of both', () => {
    const marks = [
      { from: 0, to: 5, kind: 'name' as const },
      { from: 8, to: 13, kind: 'function' as const },
    ];
    expect(markedText('depth + clamp(1)', { marks, faults: [{ from: 3, to: 13, says: '' }] })).toEqual([
      { text: 'dep', looks: ['name'] },
      { text: 'th', looks: ['name', 'fault'] },
      { text: ' + ', looks: ['fault'] },
      { text: 'clamp', looks: ['function', 'fault'] },
      { text: '(1)', looks: [] },
    ]);
  });

  test('what is missing at the end is marked at the last letter that stands', () => {
    const missing = (from: number) => ({ marks: [], faults: [{ from, to: from, says: '' }] });
    expect([markedText('a * ', missing(4)), markedText('=', missing(0))]).toEqual([
      [
        { text: 'a ', looks: [] },
        { text: '*', looks: ['fault'] },
        { text: ' ', looks: [] },
      ],
      [{ text: '=', looks: ['fault'] }],
    ]);
  });

  test('the pieces together are the text, whatever is marked', () => {
    const span = fc
      .tuple(fc.nat(30), fc.nat(30))
      .map(([a, b]) => ({ from: Math.min(a, b), to: Math.max(a, b), says: '', kind: 'name' as const }));
    fc.assert(
      fc.property(fc.string({ maxLength: 24 }), fc.array(span), fc.array(span), (text, marks, faults) => {
        expect(
          markedText(text, { marks, faults })
            .map((piece) => piece.text)
            .join(''),
        ).toBe(text);
      }),
    );
  });
});
