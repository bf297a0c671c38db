import { paperKinds, type PaperKind } from '#shared-calc/papers/all-papers.ts';
import { cautionsIn } from '#shared-calc/papers/document.ts';
import type { MadePaper, PaperInput } from '#shared-calc/papers/paper-input.ts';
import { failed } from '#shared-calc/result.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { didYouMean } from '#shared-calc/rule/did-you-mean.ts';
import { treatmentAims, treatmentWays } from '#shared-calc/trade/heat/leaf-treatment.ts';
import { calledByLines } from '#shared-calc/words/called-by-words.ts';
import { sayPaperFault } from '#shared-calc/words/say-paper-fault.ts';
import { writePaper } from '#shared-calc/words/write-paper.ts';
import type { Command } from '#electron/cli/command.ts';
import { readPaperInput } from '#electron/cli/paper-input.ts';
import { mindedJson } from '#electron/cli/cautions-answer.ts';
import { orderMisuse, orderOptions } from '#electron/cli/order-options.ts';
import { refusal, type Outcome } from '#electron/cli/outcome.ts';
import type { Arguments } from '#electron/cli/read-arguments.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';

/** All kinds of paper. */
export const papersCommand: Command = {
  name: 'papers',
  usage: 'papers: the sorts of paper, and what each is about',
  options: {},
  run: () => ({
    is: 'answer',
    json: paperKinds.map(({ kind, of, says }) => ({ kind, of, says })),
    table: () =>
      textTable(
        ['paper', 'of', ''],
        paperKinds.map(({ kind, of, says }) => [kind, of, says]),
      ),
  }),
};

/** Any paper as text, as plain data, or as a list. */
export const paperCommand: Command = {
  name: 'paper',
  usage:
    'paper KIND ORDER [--size T07] [--handover DATE] [--deposit DATE] [--way steam|boil|bake] [--aim clean|sterile] [--csv]: a paper as text; paper quote --quote Q-0001A as it was issued, paper order --order O-0001 as it was placed',
  options: {
    ...orderOptions,
    ...bookOption,
    size: 'text',
    basis: 'text',
    handover: 'text',
    deposit: 'text',
    way: 'text',
    aim: 'text',
    quote: 'text',
    order: 'text',
    csv: 'flag',
    bom: 'flag',
  },
  misuse: paperMisuse,
  run: (given) =>
    withBook(given, (book) => {
      const kind = kindOf(given);
      return kind ? paperOutcome(kind, given, book.records()) : refusal('Say which paper.');
    }),
};

function kindOf({ words: [word] }: Arguments): PaperKind | undefined {
  return paperKinds.find(({ kind }) => kind === word);
}

function paperMisuse(given: Arguments): string | undefined {
  const [word, ...more] = given.words;
  const names = paperKinds.map(({ kind }) => kind);
  if (word === undefined) return `Say which paper: ${names.join(', ')}.`;
  const kind = kindOf(given);
  if (!kind) return `No paper called ${word}.${didYouMean(word, names)} There are: ${names.join(', ')}.`;
  if (more.length > 0) return `What is ${more.join(' ')} for? Sizes are given as --sizes T03,T07x2.`;
  return notOneOf('way', given, treatmentWays) ?? notOneOf('aim', given, treatmentAims) ?? orderOfMisuse(kind, given);
}

function notOneOf(name: string, given: Arguments, words: readonly string[]): string | undefined {
  const word = given.text(name);
  return word === undefined || words.includes(word) ? undefined : `--${name} ${word}: choose ${words.join(' or ')}.`;
}

function orderOfMisuse({ kind, of }: PaperKind, given: Arguments): string | undefined {
  if (given.text('quote') !== undefined) {
    return kind === 'quote' || kind === 'inside' ? undefined : `--quote goes with paper quote and paper inside.`;
  }
  if (given.text('order') !== undefined) return kind === 'order' ? undefined : '--order goes with paper order.';
  if (of === 'workshop') return undefined;
  if (of === 'job' && given.text('job') === undefined) return `The ${kind} paper is a job's: --job J01.`;
  return orderMisuse({ ...given, words: [] });
}

function paperOutcome(kind: PaperKind, given: Arguments, records: Records): Outcome {
  const input = readPaperInput(kind.of === 'workshop', given, records);
  if (!input.ok) return refusal(...input.fault);
  const { bench } = input.value;
  const called = calledByLines(bench.input());
  const made = needsSize(kind, input.value) ? failed({ kind: 'no-size' } as const) : kind.make(input.value);
  return made.ok ? answer(kind, made.value, given) : refusal(sayPaperFault(made.fault, called));
}

function needsSize({ of }: PaperKind, { sheet, issued, order }: PaperInput): boolean {
  return sheet.columns.length === 0 && !issued && !order && (of === 'order' || of === 'tank');
}

function answer({ kind }: PaperKind, { data, document, csv }: MadePaper, given: Arguments): Outcome {
  if (given.flag('csv') && csv === undefined) return refusal(`The ${kind} paper is no list; leave --csv away.`);
  return {
    is: 'answer',
    json: { kind, title: document.title, data, ...mindedJson(cautionsIn(document)) },
    table: () => writePaper(document, textTable),
    ...(csv !== undefined && { csv: () => csv }),
  };
}
