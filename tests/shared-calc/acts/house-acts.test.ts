import { describe, expect, test } from 'vitest';
import { derive } from '#shared-calc/derive/derived.ts';
import { houseOffers, jobsTouched } from '#shared-calc/derive/house-offers.ts';
import { linesFor } from '#shared-calc/recipe/lines-of.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { issued, libraryJob, valueOf, written } from '#tests/shared-calc/jobs/demo-jobs.ts';
import { allOf, houseWritten, lineOf, soldJob, worked } from '#tests/shared-calc/jobs/sold-jobs.ts';
import { done, refused } from './do-act.ts';

const sold = soldJob();
const litter = { line: 'litter', text: '20 mm' };
const propose = (records: Records) =>
  done(records, 'proposeHouse', { recipe: 'H1', lines: [litter], note: 'thinner lasts', fromJob: 'J02' }).records;
const answer = { change: 'HC-0001', job: 'J02', who: 'R-builder' } as const;
const changeOf = (records: Records, id = 'HC-0001') => records.houseChange.get(id);

describe('proposeHouse', () => {
  test('a proposal writes no line and offers nothing', () => {
    const next = propose(sold);
    expect([next.line, next.localValue]).toEqual([sold.line, sold.localValue]);
    expect(changeOf(next)).toMatchObject({
      recipe: 'H1',
      on: DEMO_DAY,
      note: 'thinner lasts',
      fromJob: 'J02',
      answers: [],
    });
    expect(houseOffers(derive(next, DEMO_DAY))).toEqual([]);
  });

  test('what the house has already, an unknown line or an unreadable text is refused', () => {
    const of = (line: string, text: string) =>
      refused(sold, 'proposeHouse', { recipe: 'H1', lines: [{ line, text }], note: '' });
    expect([of('litter', '30 mm'), of('liter', '20 mm'), of('litter', '20 L')]).toEqual([
      'H1 has that already: nothing to propose.',
      'Nothing called liter. Did you mean litter?',
      expect.stringContaining('litter'),
    ]);
  });

  test('each job of the recipe is told what it is to it', () => {
    const quoted = done(soldJob(), 'copyJob', { job: 'J02' }).records;
    const built = done(quoted, 'moveJob', { job: 'J02', state: 'closed' }).records;
    const change = { before: lineOf(quoted, 'litter'), after: { ...lineOf(quoted, 'litter'), text: '20 mm' } };
    const will = (records: Records) =>
      jobsTouched(derive(records, DEMO_DAY), 'H1', [change]).map(({ job, will: is, effect }) => [
        job.id,
        is,
        effect?.ok === true ? effect.value.gross.to - effect.value.gross.from : undefined,
      ]);
    expect(will(quoted)).toEqual([
      ['J01', 'follow', expect.any(Number)],
      ['J02', 'be offered', -347],
      ['J03', 'follow', -347],
    ]);
    expect(will(built).map(([job]) => job)).toEqual(['J01', 'J03']);
  });
});

describe('forceHouse', () => {
  test('the line is written, the log says since when, and the sold job is offered it', () => {
    const next = done(propose(sold), 'forceHouse', { change: 'HC-0001', on: '2027-03-10' }).records;
    expect(lineOf(next, 'litter').text).toBe('20 mm');
    expect(changeOf(next)?.inForceOn).toBe('2027-03-10');
    expect(allOf(next)).toEqual(allOf(sold));
    expect(houseOffers(derive(next, DEMO_DAY)).map(({ job }) => job.id)).toEqual(['J02']);
  });

  test('what else became of the line meanwhile stays', () => {
    const noted = done(propose(sold), 'changeLine', { line: 'H1.litter', fields: { high: 90 } }).records;
    const next = done(noted, 'forceHouse', { change: 'HC-0001' }).records;
    expect(lineOf(next, 'litter')).toMatchObject({ text: '20 mm', high: 90 });
  });

  test('it is put in force once, and dropped only before that', () => {
    const forced = done(propose(sold), 'forceHouse', { change: 'HC-0001' }).records;
    const says = `HC-0001 is in force since 8 March 2027: it stays in the log. Change the line back instead.`;
    expect(refused(forced, 'forceHouse', { change: 'HC-0001' })).toBe(says);
    expect(refused(forced, 'dropHouse', { change: 'HC-0001' })).toBe(says);
  });

  test('a proposal is dropped once', () => {
    const dropped = done(propose(sold), 'dropHouse', { change: 'HC-0001' }).records;
    expect(dropped.houseChange.size).toBe(0);
    expect(refused(dropped, 'dropHouse', { change: 'HC-0001' })).toContain('HC-0001');
  });

  test('a line that has left the house meanwhile is told', () => {
    const gone = done(propose(sold), 'removeLine', { line: 'H1.litter', anyway: true }).records;
    expect(refused(gone, 'forceHouse', { change: 'HC-0001' })).toBe('litter has left the house: drop HC-0001.');
  });
});

describe('answerHouse', () => {
  const thinner = houseWritten(sold, 'litter', '20 mm');

  test('the answer has its day and who gave it, and is given once', () => {
    const taken = done(thinner, 'answerHouse', { ...answer, answer: 'take' });
    expect(taken.label).toBe('J02 takes HC-0001');
    expect(changeOf(taken.records)?.answers).toEqual([{ job: 'J02', answer: 'take', on: DEMO_DAY, by: 'R-builder' }]);
    expect(refused(taken.records, 'answerHouse', { ...answer, answer: 'leave' })).toBe(
      `J02 took HC-0001 on 8 March 2027; it is answered once.`,
    );
  });

  test('a job that is being built takes nothing any more', () => {
    const built = done(thinner, 'moveJob', { job: 'J02', state: 'deposit in' }).records;
    const done2 = done(built, 'moveJob', {
      job: 'J02',
      state: 'built',
      anyway: 'the hall opens',
      who: 'R-builder',
    }).records;
    expect(refused(done2, 'answerHouse', { ...answer, answer: 'take' })).toBe(
      'J02 is built: HC-0001 comes too late for it. An answer is asked from accepted to ready to build.',
    );
    expect(houseOffers(derive(done2, DEMO_DAY))).toEqual([]);
  });

  test('a proposal, a job that follows its house, and a job of another recipe have nothing to answer', () => {
    const copied = done(thinner, 'copyJob', { job: 'J02' }).records;
    expect(refused(propose(sold), 'answerHouse', { ...answer, answer: 'take' })).toBe(
      'HC-0001 is only proposed: put it in force first.',
    );
    expect(refused(copied, 'answerHouse', { ...answer, job: 'J03', answer: 'take' })).toBe(
      'HC-0001 is not offered to J03: it follows its house, and has it already.',
    );
  });

  test('a line that the job was sold without cannot be read by one that it takes', () => {
    const added = done(sold, 'addLine', { recipe: 'H1', after: 'litter' }).records;
    const reading = houseWritten(added, 'litter', 'figure + 5 mm');
    const change = [...reading.houseChange.values()].find(({ after }) => after?.name === 'litter');
    expect(refused(reading, 'answerHouse', { ...answer, change: change?.id ?? '', answer: 'take' })).toBe(
      `J02 cannot take ${change?.id ?? ''}: Litter depth could not be worked in the house that it was sold in.`,
    );
  });
});

describe('the log of a house', () => {
  test('edits of one line on one day by hand are one change, and back at the start none', () => {
    const twice = houseWritten(houseWritten(sold, 'litter', '20 mm'), 'litter', '25 mm');
    expect([...twice.houseChange.values()].map(({ before, after }) => [before?.text, after?.text])).toEqual([
      ['30 mm', '25 mm'],
    ]);
    const { source } = lineOf(sold, 'litter');
    const back = done(houseWritten(twice, 'litter', '30 mm'), 'changeLine', { line: 'H1.litter', fields: { source } });
    expect(back.records.houseChange.size).toBe(0);
  });

  test('what a sold job has answered is not written over: the next edit is a change of its own', () => {
    const left = done(houseWritten(sold, 'litter', '20 mm'), 'answerHouse', { ...answer, answer: 'leave' }).records;
    expect([...houseWritten(left, 'litter', '10 mm').houseChange.keys()]).toEqual(['HC-0001', 'HC-0002']);
  });

  test('every way to write a line is in it: a record put, a value sent to the house, a line taken out', () => {
    const line = { ...lineOf(sold, 'litter'), text: '25 mm' };
    const put = done(sold, 'put', { kind: 'line', record: line }).records;
    const own = written(libraryJob(), 'us', { 'T05.litter': '20 mm' });
    const sent = done(own, 'sendToHouse', { job: 'J02', column: 'T05', line: 'litter' }).records;
    const out = done(sold, 'removeLine', { line: 'H1.litter', anyway: true }).records;
    expect([changeOf(put)?.after?.text, changeOf(sent)?.fromJob, changeOf(out)?.after]).toEqual([
      '25 mm',
      'J02',
      undefined,
    ]);
  });

  test('a recipe that is copied or removed as a whole has no log of its lines', () => {
    expect(done(sold, 'copyRecipe', { recipe: 'H1' }).records.houseChange.size).toBe(0);
  });
});

describe('editHouse', () => {
  test('lines that are taken over stand in the log with the note', () => {
    const input = { recipe: 'H1', from: 'H2', lines: ['litter'], along: true, clash: 'take' };
    const thin = done(sold, 'writeLine', { line: 'H2.litter', text: '22 mm' }).records;
    const next = done(thin, 'editHouse', {
      act: 'takeLines',
      input,
      note: 'as the school had it',
      as: 'in force',
    }).records;
    const entries = [...next.houseChange.values()].filter(({ recipe, note }) => recipe === 'H1' && note !== '');
    expect(entries.map(({ after, note }) => [after?.name, after?.text, note])).toEqual([
      ['litter', '22 mm', 'as the school had it'],
    ]);
  });

  test('what is proposed for some tanks is put in force for them alone', () => {
    const edit = {
      act: 'writeLineFor',
      input: { line: 'H1.litter', tanks: ['T03'], text: '20 mm' },
      note: 'low tank',
      as: 'proposal',
    } as const;
    const kept = done(sold, 'editHouse', edit).records;
    expect([kept.difference.size, changeOf(kept)?.for]).toEqual([0, ['T03']]);
    const next = done(kept, 'forceHouse', { change: 'HC-0001' }).records;
    const on = (tank: string) => linesFor(next, 'H1', tank).find(({ name }) => name === 'litter')?.text;
    expect([on('T03'), on('T07')]).toEqual(['20 mm', '30 mm']);
  });

  const own = written(libraryJob(), 'us', { 'T05.litter': '20 mm' });
  const input = { job: 'J02', column: 'T05', line: 'litter' };

  test('a value sent to the house as a proposal stays with its job until it is in force', () => {
    const edit = { act: 'sendToHouse', input, note: 'thinner lasts', as: 'proposal' } as const;
    const kept = done(own, 'editHouse', edit).records;
    expect([lineOf(kept, 'litter').text, kept.localValue]).toEqual(['30 mm', own.localValue]);
    const forced = done(kept, 'forceHouse', { change: 'HC-0001' }).records;
    expect(lineOf(forced, 'litter').text).toBe('20 mm');
    expect([...forced.localValue.values()].some(({ job, line }) => job === 'J02' && line === 'litter')).toBe(false);
  });

  test('in force with a note, the note stands in the log', () => {
    const edit = {
      act: 'writeLine',
      input: { line: 'H1.litter', text: '20 mm' },
      note: 'drier room',
      as: 'in force',
    } as const;
    const next = done(own, 'editHouse', edit).records;
    expect([lineOf(next, 'litter').text, changeOf(next)?.note, changeOf(next)?.inForceOn]).toEqual([
      '20 mm',
      'drier room',
      DEMO_DAY,
    ]);
  });

  test('a sold job that sends a value to the house keeps it: its own house is as it was', () => {
    const edited = written(sold, 'us', { 'T05.litter': '20 mm' });
    const next = done(edited, 'sendToHouse', input).records;
    expect(allOf(next)).toEqual(allOf(edited));
    expect(lineOf(next, 'litter').text).toBe('20 mm');
  });
});

describe('accepting a quote', () => {
  const quoted = issued(libraryJob(), 'A').records;
  const accept = { job: 'J02', state: 'accepted' } as const;

  test('a job whose boxes are not those of the quote is not accepted as they are', () => {
    const edited = written(quoted, 'client', { litter: '40 mm', 'T05.kit': 'show' });
    expect(refused(edited, 'moveJob', accept)).toBe(
      'J02 differs from Q-0001A in 2 boxes: issue a revision, or say --as-issued.',
    );
    const next = done(edited, 'moveJob', { ...accept, asIssued: true }).records;
    expect(worked(next).sums()).toEqual(worked(soldJob(quoted)).sums());
    expect(next.job.get('J02')).toMatchObject({ soldAs: 'Q-0001A', acceptedOn: DEMO_DAY, state: 'accepted' });
  });

  test('as issued puts sizes and one-off lines back, too', () => {
    const more = done(quoted, 'setSizes', {
      job: 'J02',
      sizes: [
        { tank: 'T07', count: 2 },
        { tank: 'T05', count: 3 },
      ],
    });
    const stool = { job: 'J02', label: 'Stool', group: 'media', costCoins: 1_000, by: 'client' } as const;
    const edited = done(more.records, 'addQuoteLine', stool).records;
    const next = done(edited, 'moveJob', { ...accept, asIssued: true }).records;
    expect(worked(next).sold?.differs().words).toBe('');
    expect(worked(next).keys).toEqual(['T05']);
  });

  test('the quote that is named is taken, and must be one of the job', () => {
    const twice = issued(quoted, 'B').records;
    expect(done(twice, 'moveJob', { ...accept, quote: 'q-0001a' }).records.job.get('J02')?.soldAs).toBe('Q-0001A');
    expect(refused(twice, 'moveJob', { ...accept, quote: 'Q-0009A' })).toBe(
      'Q-0009A is no quote of J02. Did you mean Q-0001A? It has Q-0001A, Q-0001B.',
    );
  });

  test('a job without a quote is frozen under a number that no client was sent', () => {
    const next = done(libraryJob(), 'recordDeposit', { job: 'J02', coins: 64_500 }).records;
    expect(next.job.get('J02')).toMatchObject({ soldAs: 'S-0001A', acceptedOn: DEMO_DAY });
    expect(allOf(houseWritten(next, 'litter', '20 mm'))).toEqual(allOf(next));
  });

  test('a job that cannot be priced is frozen as soon as it can and moves on', () => {
    const bare = done(libraryJob({ sizes: [] }), 'moveJob', accept).records;
    expect(worked(bare).sold).toBeUndefined();
    const sized = done(bare, 'setSizes', { job: 'J02', sizes: [{ tank: 'T05', count: 1 }] }).records;
    const paid = done(sized, 'moveJob', { job: 'J02', state: 'deposit in' }).records;
    expect(paid.job.get('J02')?.soldAs).toBe('S-0001A');
  });

  test('a job that goes back before its yes follows its house again', () => {
    const back = done(soldJob(quoted), 'moveJob', { job: 'J02', state: 'quoted' }).records;
    expect(back.job.get('J02')).not.toHaveProperty('soldAs');
    expect(valueOf(worked(houseWritten(back, 'litter', '20 mm')).sums())).not.toEqual(valueOf(worked(back).sums()));
  });
});
