import type { BoxView, LineRow } from '#renderer/bench/view-model.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import type { PanelView, StandingView } from '#renderer/panel/panel-view.ts';
import { limitUses, placeUses, type PlaceCheck, type PlaceUse } from '#shared-calc/jobs/place-checks.ts';
import { limitWords } from '#shared-calc/papers/checks-paper.ts';
import { readUnits } from '#shared-calc/quantity/figure-words.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { capital } from '#shared-calc/rule/capital.ts';
import { whoDecides } from '#shared-calc/words/who-decides.ts';

/** The section of the limits, below those of the recipe. */
export const LIMITS = 'Place limits';

/** A limit's key among rows; no line can have this name. */
export function limitRowId(use: PlaceUse): string {
  return `limit ${use}`;
}

export function limitOfRow(id: string): PlaceUse | undefined {
  return limitUses.find((use) => limitRowId(use) === id);
}

export function limitRow(use: PlaceUse): LineRow {
  return { kind: 'line', id: limitRowId(use), label: limitWords[use], aside: '', unit: '', inset: false };
}

type Look = Extract<StandingView['look'], 'holds' | 'needs' | 'stop' | 'watch' | 'advice'>;

function lookOf({ state, level }: PlaceCheck): Look {
  if (state === 'holds') return 'holds';
  return state === 'not known yet' ? 'needs' : level;
}

/** `stop`, `not known yet` */
function stateWords({ state, level }: PlaceCheck): string {
  return state === 'fails' ? level : state;
}

/** A limit's cell: nobody writes in it, the survey does. */
export function limitBox(check: PlaceCheck, called: string, display: Display): BoxView {
  const look = lookOf(check);
  const said = stateWords(check);
  const sentence = check.state === 'holds' ? said : `${said}: ${readUnits(check.says, display)}`;
  return {
    form: 'flat',
    source: 'house',
    look,
    ...(look !== 'holds' && { sign: look === 'needs' ? 'need' : look }),
    said,
    figure: '',
    spoken: `${limitWords[check.use]}, ${called}, ${sentence}`,
    entry: '',
    copied: said,
    closed: true,
    closedBy: {
      is: 'worked from the survey',
      why: 'This follows from the survey of the job and the animals of the size.',
    },
  };
}

interface LimitAt {
  readonly column: string;
  readonly called: string;
  readonly display: Display;
  /** The job's id; none for an issued quote. */
  readonly job: string | undefined;
}

/** The side panel for a limit: what it says, who decides, and the way to where it is asked. */
export function limitPanel(check: PlaceCheck, { column, called, display, job }: LimitAt): PanelView {
  const words = stateWords(check);
  const says = readUnits(check.says, display);
  const holds = check.state === 'holds';
  return {
    id: `${limitRowId(check.use)} ${column}`,
    where: `${called}, ${LIMITS}`,
    steppedFrom: [],
    title: limitWords[check.use],
    answer: { figure: words, unit: '' },
    nameInRules: '',
    standing: [{ look: lookOf(check), words: holds ? says : capital(words) }],
    ...(!holds && {
      check: {
        says,
        figures: '',
        decides: `${whoDecides(check.decides)}.`,
        hasCures: false,
        isUnknown: check.state === 'not known yet',
        ...(job !== undefined && { askAt: askAt(job, check.use) }),
      },
    }),
    ranges: [],
    sources: [],
    rests: { rows: [], more: 0 },
    cautions: [],
  };
}

function askAt(job: string, use: PlaceUse): { readonly says: string; readonly to: string } {
  return placeUses.some((each) => each === use)
    ? { says: `To the survey of ${job}`, to: writeRoute('jobs', job, 'survey') }
    : { says: `To the sizes of ${job} and their animals`, to: writeRoute('jobs', job) };
}
