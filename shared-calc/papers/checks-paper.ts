import { missingData, sayMissing } from '#shared-calc/bench/waits.ts';
import type { CheckState } from '#shared-calc/bench/bench-types.ts';
import { answerOfState } from '#shared-calc/bench/check-state.ts';
import type { PlaceUse } from '#shared-calc/jobs/place-checks.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import type { FigureFrom } from '#shared-calc/bench/rests-on.ts';
import { sayUnsure, checkWords } from '#shared-calc/bench/source-words.ts';
import { heading, paragraph, type PaperBlock } from './document.ts';
import { displayFor, titleOf, type MakePaper } from './paper-input.ts';
import { sheetOn, type SizeSheet } from './size-sheet.ts';
import type { Mend } from '#shared-calc/prepare/mends.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { sayMend } from '#shared-calc/prepare/say-mend.ts';
import type { Workshop } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { ok } from '#shared-calc/result.ts';

/** The sheet of checks of each size: what holds, what does not or is not known yet, and what would fix it. */
export const checksPaper: MakePaper = (input) => {
  const { bench, pricing, records } = input;
  const workshop = workshopOf(records);
  const terms = { display: displayFor(input), pricing };
  const sheets = bench.input().columns.map(({ key }) => sheetOn(bench, key, { place: input.place, terms }));
  return ok({
    data: sheets.map((sheet) => dataOf(sheet, workshop)),
    document: {
      title: `Checks, ${titleOf(input)}`,
      blocks: sheets.flatMap((sheet) => blocksOf(sheet, workshop)),
    },
  });
};

export const limitWords: Readonly<Record<PlaceUse, string>> = {
  underFives: 'Children under five',
  weakImmunity: 'Over 65 or weak immunity',
  wayIn: 'Way in',
  clearSize: 'Clear size',
  shelf: 'Shelf',
  sun: 'Sun',
  animalKind: 'Kind of animal',
  animalRoom: 'Room for the animals',
  animalGroup: 'Size of the group',
};

interface Row {
  readonly what: string;
  readonly level: string;
  readonly state: CheckState;
  readonly badIn: readonly string[];
  readonly says: string;
  readonly decides: string;
  readonly mends: readonly string[];
  readonly cures: readonly Cure[];
  /** Figures it rests on that are from memory, without a source, or typed here. */
  readonly restsOn: readonly RestsOn[];
  /** The same in words. */
  readonly unsure: readonly string[];
  /** Its state as it is written. */
  readonly said: string;
}

interface RestsOn {
  readonly line: string;
  readonly from: FigureFrom;
  readonly note: string;
}

/** A mend as data: one line set to a figure, what the check comes to, the figure that it minds, and what it adds to the cost. */
interface Cure {
  readonly set: { readonly line: string; readonly to: string };
  readonly state: CheckState;
  readonly value: number | null;
  readonly cost: string | null;
}

function curesOf({ changes, state, margin, savesCostCoins }: Mend, { coinDecimals }: Workshop): readonly Cure[] {
  const [change, ...others] = changes;
  if (!change || others.length > 0) return [];
  const cost = savesCostCoins === undefined ? null : coinsText(-savesCostCoins, coinDecimals);
  return [{ set: { line: change.line, to: change.text }, state, value: margin ? cleanNoise(margin.has) : null, cost }];
}

function rowsOf({ place, rows }: SizeSheet, workshop: Workshop): readonly Row[] {
  return [
    ...place.map(({ use, level, state, says, decides }) => ({
      what: limitWords[use],
      level,
      state,
      badIn: [],
      says,
      decides,
      mends: [],
      cures: [],
      restsOn: [],
      unsure: [],
      said: state,
    })),
    ...rows.map(({ line, level, state, badIn, says, decides, mends, unsure }) => ({
      what: lineLabel(line),
      level,
      state,
      badIn,
      says,
      decides,
      mends: mends.map((mend) => sayMend(mend, workshop)),
      cures: mends.flatMap((mend) => curesOf(mend, workshop)),
      restsOn: [...unsure.memory, ...unsure.unsaid].map(({ line: { name }, from, note }) => ({
        line: name,
        from,
        note,
      })),
      unsure: sayUnsure(unsure, line.name),
      said: checkWords(state, unsure),
    })),
  ];
}

/** A check that fails is called by its level. */
function stateOf({ state, said, level }: Row): string {
  return state === 'fails' ? level : said;
}

/** `3 of 21 checks do not hold; 1 may not hold; 2 not known yet.` */
export function countChecks(rows: readonly { readonly state: CheckState }[]): string {
  const count = (of: CheckState) => rows.filter(({ state }) => state === of).length;
  const [failing, unsure, unknown] = [count('fails'), count('may not hold'), count('not known yet')];
  const first =
    failing === 0
      ? `${unsure === 0 ? 'Every check that is known holds' : 'No check is known to fail'}`
      : `${failing} of ${rows.length} checks ${failing === 1 ? 'does' : 'do'} not hold`;
  const others = [
    ...(unsure === 0 ? [] : [`${unsure} may not hold`]),
    ...(unknown === 0 ? [] : [`${unknown} not known yet`]),
  ];
  return `${[first, ...others].join('; ')}.`;
}

function blocksOf(sheet: SizeSheet, workshop: Workshop): readonly PaperBlock[] {
  const rows = rowsOf(sheet, workshop);
  const waits = new Set(sheet.missing.flatMap(({ checks }) => checks.map(lineLabel)));
  const open = rows.filter(({ state, what }) => state !== 'holds' && !waits.has(what));
  return [
    heading(sheet.called),
    paragraph(countChecks(rows)),
    ...sheet.missing.map((missing) => paragraph(`${sheet.called}: ${sayMissing(missing)}`)),
    { is: 'table', head: ['check', 'state'], rows: rows.map((row) => [row.what, stateOf(row)]) },
    { is: 'cautions', rows: open.map(({ what, says, decides }) => ({ about: what, says, decides })) },
    ...open.filter(({ mends }) => mends.length > 0).flatMap(mendBlocks),
    ...unsureBlocks(rows),
    heading('What these figures do not know'),
    {
      is: 'facts',
      rows: sheet.beside.map(({ labels, misleads, says, decides }) => [
        labels.join(', '),
        `${misleads}. ${says}`,
        decides,
      ]),
    },
  ];
}

function mendBlocks({ what, mends }: Row): readonly PaperBlock[] {
  return [heading(`Would mend: ${what}`), { is: 'list', items: mends }];
}

function unsureBlocks(rows: readonly Row[]): readonly PaperBlock[] {
  const facts = rows.flatMap(({ what, unsure }) => (unsure.length === 0 ? [] : [[what, unsure.join(' ')] as const]));
  return facts.length === 0
    ? []
    : [heading('Figures that nobody can look up, or has asked'), { is: 'facts', rows: facts }];
}

function dataOf(sheet: SizeSheet, workshop: Workshop): Record<string, unknown> {
  return {
    size: sheet.size,
    called: sheet.called,
    missing: sheet.missing.map(missingData),
    checks: rowsOf(sheet, workshop).map(({ unsure: _unsure, said: _said, ...row }) => ({
      ...row,
      holds: answerOfState(row.state) ?? null,
    })),
    beside: sheet.beside,
  };
}
