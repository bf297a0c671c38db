import { sayUnits } from '#shared-calc/words/say-units.ts';
import { cautionInUnits } from '#shared-calc/cautions/caution-in-units.ts';
import { capital } from '#shared-calc/rule/capital.ts';
import type { CautionView, StandingView } from '#renderer/panel/panel-view.ts';
import type { Box } from '#shared-calc/bench/bench-types.ts';
import { missingFigures, sayWaiting } from '#shared-calc/bench/waits.ts';
import { restsOn, unsureAmong } from '#shared-calc/bench/rests-on.ts';
import { checkWords } from '#shared-calc/bench/source-words.ts';
import { boxWarnings } from '#shared-calc/bench/box-warnings.ts';
import { NO_KIND } from '#shared-calc/jobs/animal-checks.ts';
import { figuresOfTank } from '#shared-calc/prepare/act-cautions.ts';
import { boxCautions } from '#shared-calc/prepare/box-cautions.ts';
import { sizeFigures } from '#shared-calc/prepare/size-figures.ts';
import { sayDecided, whoDecides } from '#shared-calc/words/who-decides.ts';
import { sayBoxCause } from '#shared-calc/words/say-box-cause.ts';
import type { BoxParts } from './box-view.ts';
import { figureWords, readUnits } from '#shared-calc/quantity/figure-words.ts';
import { toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { calledByWords } from '#shared-calc/words/called-by-words.ts';

/** The state of a cell: one line for each thing there is to say, with its reason. */
export function standingsOf(box: Box, parts: BoxParts): readonly StandingView[] {
  const { issued } = parts;
  return [
    ...(issued === undefined ? [] : [{ look: 'issued' as const, words: `In quote ${issued}` }]),
    ...sourceStanding(box, parts.called),
    ...kindStanding(box, parts),
    ...causeStanding(box, parts),
    ...checkStanding(box, parts),
    ...flagStandings(box, parts),
    ...boxWarnings(parts.bench, box).map(({ says, decides }) => ({
      look: 'watch' as const,
      words: `${says} ${whoDecides(decides)}.`,
    })),
  ];
}

const giverSays = {
  survey: 'As the survey of the job',
  kind: 'As the kind of animal in this size',
} as const;

function sourceStanding({ source, rule }: Box, called: string): readonly StandingView[] {
  if (source === 'survey' || source === 'kind') return [{ look: 'job', words: giverSays[source] }];
  if (source === 'local') return [{ look: 'local', words: `Local ${rule ? 'rule' : 'value'}, for ${called} only` }];
  return source === 'job' ? [{ look: 'job', words: `${rule ? 'Rule' : 'Value'} for the whole job` }] : [];
}

const ofTheKind: ReadonlySet<string> = new Set(['speciesCeiling', 'speciesFloor', 'bandLow', 'bandHigh', 'dipAllowed']);

/** What animals stand, where the size of a job names no kind of them. */
function kindStanding({ source, line, column }: Box, { bench }: BoxParts): readonly StandingView[] {
  if (source !== 'house' || !ofTheKind.has(line.use ?? '')) return [];
  const animals = bench.input().columns.find(({ key }) => key === column)?.animals;
  return animals && !animals.kind && animals.count !== 0 ? [{ look: 'watch', words: NO_KIND }] : [];
}

function causeStanding({ cause, line, state }: Box, { bench, column, faces }: BoxParts): readonly StandingView[] {
  if (!cause) return [];
  const waits = missingFigures(bench, column).find((missing) => missing.line === line && line.role !== 'check');
  const words = [
    sayBoxCause(cause, line.name, calledByWords(faces)),
    ...(waits ? [capital(sayWaiting(waits))] : []),
  ].join(' ');
  return [{ look: state === 'loop' || state === 'waiting' ? state : 'needs', words }];
}

function checkStanding(box: Box, { bench, column }: BoxParts): readonly StandingView[] {
  const state = box.check?.state ?? 'not known yet';
  if (state === 'not known yet') return [];
  if (state === 'not asked') return [{ look: 'holds', words: 'Not asked: the range of a figure says it better' }];
  if (state === 'holds') {
    const words = checkWords(state, unsureAmong(restsOn(bench, column, box.line.name)));
    return [{ look: 'holds', words: capital(words) }];
  }
  if (state === 'may not hold') return [{ look: 'watch', words: 'May not hold' }];
  const level = box.line.level ?? 'watch';
  return [{ look: level, words: capital(level) }];
}

function flagStandings({ flags, line }: Box, parts: BoxParts): readonly StandingView[] {
  return flags.map((flag) =>
    flag === 'out of range'
      ? { look: 'range', words: rangeWords(line, parts) }
      : { look: 'old', words: 'Old price: look it up again in the material book.' },
  );
}

function rangeWords({ low, high, unit }: Box['line'], { faces: { display } }: BoxParts): string {
  const said = (bound: number) => figureWords(toBase(bound, unitOf(unit)), unit, display);
  if (low !== undefined && high !== undefined) return `Out of range: it lies between ${said(low)} and ${said(high)}.`;
  if (low !== undefined) return `Out of range: at least ${said(low)}.`;
  return `Out of range: at most ${high === undefined ? '' : said(high)}.`;
}

/** What to mind at a cell and who decides. A check says it in its own part of the panel. */
export function cautionsOf(box: Box, parts: BoxParts): readonly CautionView[] {
  const { bench, column, faces } = parts;
  if (box.line.role === 'check') return [];
  const fill = figuresOfTank(sizeFigures(bench, column, faces.display));
  return boxCautions(box, fill).map((each) => ({
    words: sayUnits(readUnits(cautionInUnits(each, faces.display).says, faces.display)),
    decides: sayDecided(each),
  }));
}
