import type { PanelView } from '#renderer/panel/panel-view.ts';
import type { RuleHelp } from '#renderer/writing/rule-help.ts';

/** The side panel of one fixed cell. */
export const drawnPanel: PanelView = {
  id: 'drain_gap T08',
  where: 'T08, Drainage',
  steppedFrom: [],
  title: 'Drain gap',
  answer: { figure: '15', unit: 'mm' },
  nameInRules: 'drain_gap',
  ranges: [],
  standing: [{ look: 'local', words: 'Local rule, for T08 only' }],
  rule: { kind: 'Rule', text: 'clamp(drainage / 3, 10 mm, 20 mm)', closed: false },
  putIn: {
    pieces: [
      { text: 'clamp(', strong: false },
      { text: '45 mm', strong: true },
      { text: ' / 3, 10 mm, 20 mm) = ', strong: false },
      { text: '15 mm', strong: true },
    ],
    words: 'A third of 45 mm is 15 mm, and that lies between 10 mm and 20 mm.',
  },
  rests: { rows: [], more: 0 },
  sources: [
    { name: 'drainage', label: 'drainage', figure: '45 mm', from: 'house rule, from the dam of T08', steps: true },
    { name: 'limits', label: 'limits', figure: '10, 20 mm', from: 'written in this rule', steps: false },
  ],
  house: {
    figure: '10',
    unit: 'mm',
    canGoBack: true,
    canSend: true,
    canHold: true,
    asked: { byClient: false, closed: false },
    caption: 'What the local rule changes',
    effects: [
      { label: 'Room for water', houseFigure: '10.08', figure: '8.64', unit: 'L' },
      { label: 'Drainage fills in', houseFigure: '68.1', figure: '58.4', unit: 'd' },
      { label: 'Filled mass', houseFigure: '153.42', figure: '151.98', unit: 'kg' },
    ],
  },
  cautions: [
    {
      words: 'Standing water below the mesh gap always; a sour smell means drain now.',
      decides: 'Builder decides; common practice, no source.',
    },
  ],
  note: { text: 'Deep bed: keep the roots further from the water.', closed: false },
};

const names = [
  { insert: 'drainage', label: 'Drainage depth', figure: '45 mm' },
  { insert: 'drainage_need', label: 'Expanded clay, loose', figure: '34.05 L' },
  { insert: 'drain_gap', label: 'Drain gap', figure: '15 mm' },
  { insert: 'drain_room', label: 'Room for water', figure: '8.64 L' },
];

/** Marks functions and names, offers four names, and reports a fault for any name that contains `hieght`. */
export const drawnHelp: RuleHelp = {
  check: (text) => ({
    marks: [...text.matchAll(/[a-z][a-z_0-9]*(?=\s*\()|[a-z][a-z_]{2,}/g)].map((found) => ({
      from: found.index,
      to: found.index + found[0].length,
      kind: text[found.index + found[0].length] === '(' ? ('function' as const) : ('name' as const),
    })),
    faults: [...text.matchAll(/[a-z_]*hieght/g)].map((found) => ({
      from: found.index,
      to: found.index + found[0].length,
      says: `Nothing called ${found[0]}. Did you mean dam_height?`,
    })),
  }),
  complete: (text, cursor) => {
    const begun = /[a-z_]+$/.exec(text.slice(0, cursor))?.[0] ?? '';
    if (begun === '') return [];
    return names
      .filter((name) => name.insert.startsWith(begun) && name.insert !== begun)
      .map((name) => ({ ...name, kind: 'name' as const, from: cursor - begun.length, to: cursor }));
  },
  hint: (text) =>
    text.includes('clamp(')
      ? { written: 'clamp(figure, low, high)', says: 'keeps a figure between two limits.' }
      : undefined,
};
