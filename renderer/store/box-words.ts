import type { BoxLook } from '#renderer/bench/view-model.ts';
import type { SignName } from '#renderer/frame/sign.tsx';
import { rangeWords, sideOf } from '#shared-calc/bench/range-words.ts';
import type { Box } from '#shared-calc/bench/bench-types.ts';
import { giverWords } from '#shared-calc/words/state-words.ts';
import { calledLine } from '#shared-calc/words/called-by-words.ts';
import type { LineFaces } from './line-faces.ts';

/** The state of a cell: its look, its sign, and the words at its left. */
export interface BoxStanding {
  readonly look: BoxLook;
  readonly sign?: SignName;
  readonly said: string;
}

/** Order of states: first no figure, then what is wrong with the figure, then who wrote it. */
export function boxStanding(box: Box, faces: LineFaces): BoxStanding {
  if (box.line.role === 'check') return checkStanding(box, faces);
  const standing = missingStanding(box, faces) ?? flagStanding(box) ?? { look: 'plain', said: sourceWords(box) };
  const range = rangeBeside(box, faces);
  return range === ''
    ? standing
    : { ...standing, said: [standing.said, range].filter((each) => each !== '').join(', ') };
}

/** The end of a guessed figure's range that matters, in few words. */
export function rangeBeside({ value, range, line }: Box, { lines, display }: LineFaces): string {
  if (range === undefined || typeof value !== 'number') return '';
  if (range === 'not known') return 'range not known';
  return rangeWords({ value, range, unit: line.unit, side: sideOf(lines, line.name) }, display).beside;
}

function checkStanding(box: Box, faces: LineFaces): BoxStanding {
  const state = box.check?.state;
  if (state === 'not asked') return { look: 'holds', said: 'said by a range' };
  if (state === 'holds') return { look: 'holds', said: 'holds' };
  if (state === 'may not hold') return { look: 'watch', sign: 'watch', said: 'may not hold' };
  if (state !== 'fails') return missingStanding(box, faces) ?? { look: 'waiting', sign: 'wait', said: 'not known yet' };
  const level = box.line.level ?? 'watch';
  return { look: level, sign: level, said: level };
}

function missingStanding(box: Box, faces: LineFaces): BoxStanding | undefined {
  switch (box.state) {
    case 'needs a figure':
      return { look: 'needs', sign: 'need', said: box.cause?.why === 'faulty' ? 'cannot be read' : 'needs a figure' };
    case 'loop':
      return { look: 'loop', sign: 'loop', said: 'depends on itself' };
    case 'waiting':
      return waitStanding(box, faces);
    default:
      return undefined;
  }
}

function waitStanding({ line, cause }: Box, faces: LineFaces): BoxStanding {
  const first = cause?.why === 'waits' ? cause.problem.line : line.name;
  if (first === line.name) return { look: 'range', sign: 'range', said: 'no answer' };
  return { look: 'waiting', sign: 'wait', said: `waits on ${calledLine(faces, first)}` };
}

function flagStanding(box: Box): BoxStanding | undefined {
  const written = sourceWords(box);
  const besides = (flag: string) => (written === '' ? flag : `${written}, ${flag}`);
  if (box.flags.includes('out of range')) return { look: 'range', sign: 'range', said: besides('out of range') };
  if (box.flags.includes('old price')) return { look: 'old', sign: 'old', said: besides('old price') };
  return undefined;
}

function sourceWords({ source, rule }: Box): string {
  if (source === 'job') return 'whole job';
  if (source === 'local') return rule ? 'local rule' : 'local';
  return source === 'survey' || source === 'kind' ? giverWords[source] : '';
}

/** The state of a cell as it is read out: `house figure`, `local rule, out of range`. */
export function spokenState(box: Box, { said }: BoxStanding, sentence: string): string {
  if (box.line.role === 'check') return sentence === '' ? said : `${said}: ${sentence}`;
  if (box.value === undefined) return said;
  const kind = kindOfBox(box);
  const written = sourceWords(box);
  const besides = written !== '' && said.startsWith(written) ? said.slice(written.length) : `, ${said}`;
  return said === '' ? kind : kind + besides;
}

/** Whose it is, and whether it is given or worked: `house rule`, `local figure`, `figure as the survey`. */
export function kindOfBox(box: Box): string {
  const { source, rule, line } = box;
  const isWord = line.unit === 'choice' || line.unit === 'yes_no';
  const what = rule ? 'rule' : isWord ? 'choice' : 'figure';
  if (source === 'tank') return 'tank measurement';
  if (source === 'survey' || source === 'kind') return `${what} ${giverWords[source]}`;
  return `${source === 'job' ? 'whole job' : source} ${what}`;
}
