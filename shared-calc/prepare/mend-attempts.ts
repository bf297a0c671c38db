/** What a builder may try on one size: lines written over. */
export interface Attempt {
  readonly says: string;
  readonly changes: readonly { readonly line: string; readonly text: string }[];
}

/** What an attempt starts from: a line's figure in its own unit, or its word; `undefined` where it has none. */
export interface Figures {
  readonly number: (line: string) => number | undefined;
  readonly word: (line: string) => string | boolean | undefined;
}

/** Attempts of one sort, the smallest change first. */
type Series = (figures: Figures) => readonly Attempt[];

interface Stepped {
  readonly line: string;
  readonly unit: string;
  /** Below zero to go down. */
  readonly by: number;
  /** As far as it goes. */
  readonly to: number;
  readonly says: (figure: string) => string;
}

const MOST_STEPS = 40;

/** A figure changed step by step as far as it goes, the end itself the last. */
function stepped({ line, unit, by, to, says }: Stepped): Series {
  return ({ number }) => {
    const start = number(line);
    if (start === undefined || (to - start) * by <= 0) return [];
    const count = Math.min(MOST_STEPS, Math.ceil((to - start) / by - 1e-9));
    return Array.from({ length: count }, (_, at) => {
      const figure = by > 0 ? Math.min(to, start + by * (at + 1)) : Math.max(to, start + by * (at + 1));
      const text = `${Number(figure.toFixed(6))} ${unit}`;
      return { says: says(text), changes: [{ line, text }] };
    });
  };
}

function switched(line: string, from: string | boolean, text: string, says: string): Series {
  return ({ word }) => (word(line) === from ? [{ says, changes: [{ line, text }] }] : []);
}

/** `2 each` as "2 lamps". */
function countOf(text: string, one: string, many = `${one}s`): string {
  const count = text.replace(' each', '');
  return `${count} ${count === '1' ? one : many}`;
}

const screenOut = switched('screen_under_lamps', true, 'no', 'take the screen from under the lamps');
const fewerLamps = stepped({
  line: 'lamps',
  unit: 'each',
  by: -1,
  to: 1,
  says: (text) => `${countOf(text, 'lamp')}, and less light`,
});
const lessSoil = stepped({ line: 'soil_rise', unit: 'mm', by: -10, to: 0, says: (text) => `a slope of ${text}` });
const lessDrainage = stepped({ line: 'drainage', unit: 'mm', by: -5, to: 20, says: (text) => `drainage ${text} deep` });
const fewerBranches = stepped({
  line: 'branches_need',
  unit: 'each',
  by: -1,
  to: 0,
  says: (text) => countOf(text, 'branch', 'branches'),
});
const noPanel = stepped({ line: 'panel_walls', unit: 'each', by: -3, to: 0, says: () => 'no background' });
const thinnerCapping = stepped({ line: 'capping', unit: 'mm', by: -2, to: 6, says: (text) => `capping ${text} thick` });
const lessMist = stepped({
  line: 'mist_cycles',
  unit: 'each/d',
  by: -1,
  to: 1,
  says: (text) => `mist ${text.replace(' each/d', '')} times a day`,
});
const moreMist = stepped({
  line: 'mist_cycles',
  unit: 'each/d',
  by: 1,
  to: 12,
  says: (text) => `mist ${text.replace(' each/d', '')} times a day`,
});
const shorterMist = stepped({ line: 'mist_time', unit: 's', by: -5, to: 5, says: (text) => `mist ${text} each time` });
const widerStrip = stepped({
  line: 'cover_vent',
  unit: 'mm',
  by: 5,
  to: 200,
  says: (text) => `a vent strip of ${text}`,
});
const withTube = switched('drain_access', 'none', '"tube"', 'a siphon tube');
const withTap = switched('drain_access', 'none', '"tap"', 'a drain tap');
const cutOff = switched('mist_cut_off', false, 'yes', 'a valve against siphoning and a limit on run time');
const lessLitter = stepped({ line: 'litter', unit: 'mm', by: -5, to: 20, says: (text) => `litter ${text} deep` });
const moreLitter = stepped({ line: 'litter', unit: 'mm', by: 5, to: 60, says: (text) => `litter ${text} deep` });
const smallerUpturn = stepped({
  line: 'mesh_upturn',
  unit: 'mm',
  by: -5,
  to: 10,
  says: (text) => `mesh turned up ${text}`,
});

/** What may mend each check, the likeliest first. */
export const mendSeries: Readonly<Record<string, readonly Series[]>> = {
  air_open: [widerStrip],
  cool_enough: [screenOut, fewerLamps],
  cool_with_room: [screenOut, fewerLamps],
  water_gets_out: [withTube, withTap],
  mist_keeps_up: [moreMist],
  pump_stuck: [cutOff],
  drains_slowly: [lessMist, shorterMist],
  shelf_holds: [screenOut, lessSoil, lessDrainage, fewerBranches, noPanel],
  stack_fits: [lessDrainage, thinnerCapping],
  soil_enough: [lessDrainage, thinnerCapping],
  slope_holds: [lessSoil],
  upturn_hidden: [smallerUpturn],
  litter_behind_dam: [lessLitter],
  leaves_close: [moreLitter],
};
