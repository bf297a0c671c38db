import { describe, expect, test } from 'vitest';
import { cautionEntry, cautionIds, cautionsBeside, sayCaution } from '#shared-calc/cautions/all-cautions.ts';
import { demoRecords } from '#tests/demo-bench.ts';

const entries = cautionIds.map((id) => ({ id, ...cautionEntry(id) }));

describe('the table of cautions', () => {
  test('each fact stands in one wording', () => {
    const words = entries.map(({ says }) => says);
    expect(new Set(words).size).toBe(words.length);
  });

  test('every wording is a sentence, with a wording of its own where no tank is at hand', () => {
    const wordings = entries.flatMap(({ says, anyTank = says }) => [says, anyTank]);
    expect(wordings.filter((words) => !/^[A-Z0-9{].*[.}]$/.test(words))).toEqual([]);
    expect(entries.filter(({ says, anyTank }) => says.includes('{') !== (anyTank !== undefined))).toEqual([]);
    expect(entries.filter(({ anyTank = '' }) => anyTank.includes('{'))).toEqual([]);
  });

  test('none promises anything', () => {
    const promised = entries.filter(({ says }) => /guarantee|\bis safe\b|maintenance-free|self-cleaning/i.test(says));
    expect(promised).toEqual([]);
  });

  test('none gives the weight of a tank that nobody weighed', () => {
    expect(entries.filter(({ says, anyTank = '' }) => /\d\s*kg\b/.test(says + anyTank))).toEqual([]);
  });

  test('what is published has its address', () => {
    const published = cautionIds.map((id) => sayCaution(id)).filter(({ at }) => at !== undefined);
    expect(published.map(({ source, at }) => [source, at]).filter(([, at]) => !at?.startsWith('https://'))).toEqual([]);
    expect(new Set(published.map(({ source }) => source)).size).toBe(5);
  });

  test('those beside figures are beside lines that the house has', () => {
    const read = new Set([...demoRecords().line.values()].map((line) => line.use));
    expect(entries.flatMap(({ uses = [] }) => uses).filter((use) => !read.has(use))).toEqual([]);
    expect(cautionsBeside('shelfLoad')).toEqual(['floorVerdict']);
  });
});

describe('sayCaution', () => {
  test('fills in the figures of a tank; one that is not known yet is said to be so', () => {
    const known = sayCaution('leakTest', (figure) => ({ testLitres: '118.8 L', testMass: '178.4 kg' })[String(figure)]);
    expect(known.says).toMatch(/^The test takes 118\.8 L of water: glass and water together weigh 178\.4 kg\./);
    expect(sayCaution('lifting', (figure) => (figure === 'tank' ? 'T07' : undefined)).says).toMatch(
      /^T07 weighs \(not known yet\) filled\./,
    );
  });

  test('without a tank it speaks of any', () => {
    expect(sayCaution('lifting')).toEqual({
      id: 'lifting',
      about: 'lifting',
      says: 'Work out the weight before anyone lifts. What the crew cannot lift is built in place or goes on a trolley; lift from the base, never by the top frame.',
      decides: 'Crew leader',
      source: 'from memory',
    });
  });
});
