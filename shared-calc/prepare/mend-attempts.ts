import type { CureName, UseName } from '#shared-calc/fields/uses.ts';

/** A change to try on one size: lines written over. */
export interface Attempt {
  readonly says: string;
  readonly changes: readonly { readonly line: string; readonly text: string }[];
}

/** The start of an attempt: a figure in its line's own unit, or its word; `undefined` if there is none. */
export interface Figures {
  readonly number: (use: UseName) => number | undefined;
  readonly word: (use: UseName) => string | boolean | undefined;
  /** The name of the line; only for a use that has a figure or a word. */
  readonly line: (use: UseName) => string;
  /** A figure with its unit as the workshop reads it; left out: as it is. */
  readonly said?: (text: string) => string;
}

/** Attempts of one kind, the smallest change first. */
type Series = (figures: Figures) => readonly Attempt[];

interface Stepped {
  readonly use: UseName;
  readonly unit: string;
  /** Below zero to reduce the figure. */
  readonly by: number;
  /** The last figure to try, or how far from the start. */
  readonly to: number | { readonly from: number };
  readonly says: (figure: string) => string;
}

const MOST_STEPS = 40;
const WIDE_STRIP = 200; // mm
/** Percent of their power with which lamps warm a tank whose cover they do not touch. */
const LIFTED_SHARE = 28;
const coverThicknesses = [5, 6, 8, 10] as const; // mm

/** A figure changed step by step up to its end, which is the last attempt. */
function stepped({ use, unit, by, to: end, says }: Stepped): Series {
  return ({ number, line, said = asItIs }) => {
    const start = number(use);
    const to = typeof end === 'number' ? end : (start ?? 0) + end.from;
    if (start === undefined || (to - start) * by <= 0) return [];
    const count = Math.min(MOST_STEPS, Math.ceil((to - start) / by - 1e-9));
    return Array.from({ length: count }, (_, at) => {
      const figure = by > 0 ? Math.min(to, start + by * (at + 1)) : Math.max(to, start + by * (at + 1));
      const text = `${Number(figure.toFixed(6))} ${unit}`;
      return { says: says(said(text)), changes: [{ line: line(use), text }] };
    });
  };
}

function asItIs(text: string): string {
  return text;
}

function switched(use: UseName, from: string | boolean, text: string, says: string): Series {
  return ({ word, line }) => (word(use) === from ? [{ says, changes: [{ line: line(use), text }] }] : []);
}

/** `2 each` as "2 lamps". */
function countOf(text: string, one: string, many = `${one}s`): string {
  const count = text.replace(' each', '');
  return `${count} ${count === '1' ? one : many}`;
}

const screenOut = switched('screenUnderLamps', true, 'no', 'take the screen from under the lamps');
const fewerLamps = stepped({
  use: 'lamps',
  unit: 'each',
  by: -1,
  to: 1,
  says: (text) => `${countOf(text, 'lamp')}, and less light`,
});
const lessSoil = stepped({ use: 'soilRise', unit: 'mm', by: -10, to: 0, says: (text) => `a slope of ${text}` });
const lessDrainage = stepped({ use: 'drainage', unit: 'mm', by: -5, to: 20, says: (text) => `drainage ${text} deep` });
const fewerBranches = stepped({
  use: 'branchesNeed',
  unit: 'each',
  by: -1,
  to: 0,
  says: (text) => countOf(text, 'branch', 'branches'),
});
const noPanel = stepped({ use: 'panelWalls', unit: 'each', by: -3, to: 0, says: () => 'no background' });
const thinnerCapping = stepped({ use: 'capping', unit: 'mm', by: -2, to: 6, says: (text) => `capping ${text} thick` });
const lessMist = stepped({
  use: 'mistCycles',
  unit: 'each/d',
  by: -1,
  to: 1,
  says: (text) => `mist ${text.replace(' each/d', '')} times a day`,
});
const moreMist = stepped({
  use: 'mistCycles',
  unit: 'each/d',
  by: 1,
  to: 12,
  says: (text) => `mist ${text.replace(' each/d', '')} times a day`,
});
const shorterMist = stepped({ use: 'mistTime', unit: 's', by: -5, to: 5, says: (text) => `mist ${text} each time` });
const widerStrip = stepped({
  use: 'coverVent',
  unit: 'mm',
  by: 5,
  to: 200,
  says: (text) => `a vent strip of ${text}`,
});
/** From a wide strip in wide steps: 40 of them reach the end. */
const narrowerStrip: Series = (figures) =>
  stepped({
    use: 'coverVent',
    unit: 'mm',
    by: (figures.number('coverVent') ?? 0) > WIDE_STRIP ? -20 : -5,
    to: 0,
    says: (text) => `a vent strip of ${text}`,
  })(figures);
const morePlants = stepped({
  use: 'midNeed',
  unit: 'each',
  by: 2,
  to: { from: 20 },
  says: (text) => `${text.replace(' each', '')} middle plants`,
});
const lampsLifted = stepped({
  use: 'lampHeatShare',
  unit: '%',
  by: -100,
  to: LIFTED_SHARE,
  says: () => 'lamps lifted a hand clear of the cover',
});
const moreClearance = stepped({
  use: 'freeboard',
  unit: 'mm',
  by: 5,
  to: 20,
  says: (text) => `lip clearance ${text}`,
});
const thickerCover: Series = ({ number, line }) => {
  const start = number('coverGlass');
  if (start === undefined) return [];
  return coverThicknesses
    .filter((thickness) => thickness > start)
    .map((thickness) => ({
      says: `cover glass of ${thickness} mm`,
      changes: [{ line: line('coverGlass'), text: `${thickness} mm` }],
    }));
};
const shorterPanes = stepped({
  use: 'coverMax',
  unit: 'mm',
  by: -50,
  to: 300,
  says: (text) => `panes of at most ${text}`,
});
const withTube = switched('drainAccess', 'none', '"tube"', 'a siphon tube');
const withTap = switched('drainAccess', 'none', '"tap"', 'a drain tap');
const cutOff = switched('mistCutOff', false, 'yes', 'a valve against siphoning and a limit on run time');
const lessLitter = stepped({ use: 'litter', unit: 'mm', by: -5, to: 20, says: (text) => `litter ${text} deep` });
const moreLitter = stepped({ use: 'litter', unit: 'mm', by: 5, to: 60, says: (text) => `litter ${text} deep` });
const smallerUpturn = stepped({
  use: 'meshUpturn',
  unit: 'mm',
  by: -5,
  to: 10,
  says: (text) => `mesh turned up ${text}`,
});

/** The attempts of each cure. */
export const cureSeries: Readonly<Record<CureName, Series>> = {
  'screen out': screenOut,
  'fewer lamps': fewerLamps,
  'less soil': lessSoil,
  'less drainage': lessDrainage,
  'fewer branches': fewerBranches,
  'no background': noPanel,
  'thinner capping': thinnerCapping,
  'less mist': lessMist,
  'more mist': moreMist,
  'shorter mist': shorterMist,
  'wider strip': widerStrip,
  'narrower strip': narrowerStrip,
  'more plants': morePlants,
  'lamps lifted': lampsLifted,
  'more clearance': moreClearance,
  'thicker cover': thickerCover,
  'shorter panes': shorterPanes,
  'siphon tube': withTube,
  'drain tap': withTap,
  'mist cut-off': cutOff,
  'less litter': lessLitter,
  'more litter': moreLitter,
  'smaller upturn': smallerUpturn,
};
