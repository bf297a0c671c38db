import { describe, expect, test } from 'vitest';
import { derive } from '#shared-calc/derive/derived.ts';
import { paperKinds } from '#shared-calc/papers/all-papers.ts';
import { jobPaperInput } from '#shared-calc/papers/paper-input.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { writePaper } from '#shared-calc/words/write-paper.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { textTable } from '#electron/cli/text-table.ts';

/*
 * A US workshop reads no metric unit on its papers. A unit behind a figure is found; light, power and what a meter of
 * the salt in water shows are metric everywhere.
 */

const records = demoRecords();
const workshop = { ...workshopOf(records), units: 'us' } as const;
const derived = derive({ ...records, workshop: new Map([[workshop.id, workshop]]) }, '2027-03-08');

const metric = /[^\s]*\d[ \u00a0]?(?:°C|degC|K|mm|cm|m|km|mm²|cm²|m²|m2|m³|m3|L|mL|kg|g|g\/L|kPa|bar)(?![\w/²³])/;

/** What the demo calls its goods, tanks and kits, whatever the workshop measures in. */
const names = [records.material, records.tank, records.line]
  .flatMap((kind) => [...kind.values()].map(({ label }) => label ?? ''))
  .filter((label) => /\d/.test(label))
  .toSorted((a, b) => b.length - a.length);

const papers = [...records.job.keys()].flatMap((job) => {
  const input = jobPaperInput(derived, job);
  return paperKinds.flatMap(({ kind, make }) => {
    const made = input && make(input);
    return made?.ok ? [{ job, kind, document: made.value.document }] : [];
  });
});

/** These name packs and panes as a supplier sells them: on them what is minded is read. */
const ofGoods = new Set(['quote', 'needs', 'run', 'order']);

describe('papers of the demo in US units', () => {
  test('nearly every kind of paper can be made of the demo', () => {
    const made = new Set(papers.map(({ kind }) => kind));
    expect(paperKinds.map(({ kind }) => kind).filter((kind) => !made.has(kind))).toEqual(['labels']);
  });

  test.each(papers)('$job, $kind has no metric unit left', ({ kind, document }) => {
    const text = names.reduce((words, name) => words.replaceAll(name, ''), writePaper(document, textTable));
    expect(
      text.split('\n').filter((line) => metric.test(line) && (line.startsWith('!') || !ofGoods.has(kind))),
    ).toEqual([]);
  });
});
