import { computed, signal } from '@preact/signals';
import type { ReadonlySignal } from '@preact/signals';
import type {
  BenchView,
  BoxChange,
  BoxLook,
  BoxPlace,
  BoxView,
  FootBox,
  FootId,
  FootRow,
  HeadView,
  LineRow,
  SectionRow,
} from '#renderer/bench/view-model.ts';
import type { SectionFigures } from '#renderer/drawing/section-figures.ts';
import { signs } from '#renderer/frame/sign.tsx';
import type { SignName } from '#renderer/frame/sign.tsx';
import { figures } from './read-drawn.ts';
import type { DrawnLine, DrawnSection } from './read-drawn.ts';

/** A bench of fixed figures that computes nothing: it shows what it is given and stores edits as local values. */
export interface StandInBench {
  readonly view: ReadonlySignal<BenchView>;
  readonly write: (changes: readonly BoxChange[]) => void;
  readonly clear: (places: readonly BoxPlace[]) => void;
  readonly fold: (section: string) => void;
  readonly showAll: (section: string) => void;
  readonly setCount: (column: string, count: number) => void;
  readonly setKit: (column: string, kit: string) => void;
}

const drawnLines = new Map(figures.flatMap((section) => section.lines).map((line) => [line.name, line]));

const looks: Readonly<Record<string, BoxLook>> = {
  needs: 'needs',
  range: 'range',
  waiting: 'waiting',
  loop: 'loop',
  old: 'old',
  issued: 'issued',
  stop: 'stop',
  watch: 'watch',
  advice: 'advice',
  holds: 'holds',
};

const flat: SectionFigures = {
  shape: 'rectangle',
  overallDepth: 445,
  insideHeight: 445,
  damHeight: 110,
  glass: 5,
  baseGlass: 5,
  frontBow: 0,
  sideReturn: 0,
  frontVent: 0,
  drainage: 30,
  drainGap: 10,
  meshThickness: 0,
  meshUpturn: 30,
  capping: 10,
  beadWidth: 20,
  beadHeight: 20,
  soilFront: 60,
  soilRise: 0,
  litter: 30,
  coverVent: 25,
  lamps: 2,
};

export const drawnSections: Readonly<Record<string, SectionFigures>> = {
  T03: flat,
  T07: { ...flat, insideHeight: 600, damHeight: 150, glass: 6, baseGlass: 6, drainage: 40, soilFront: 90, lamps: 3 },
  T08: {
    ...flat,
    overallDepth: 600,
    insideHeight: 600,
    damHeight: 165,
    glass: 8,
    baseGlass: 8,
    drainage: 45,
    drainGap: 15,
    soilFront: 100,
    lamps: 3,
  },
};

const kits = [
  { value: 'basic', label: 'Basic kit' },
  { value: 'full', label: 'Full kit' },
  { value: 'show', label: 'Show kit' },
];

const heads: readonly HeadView[] = [
  { key: 'T03', size: '445 × 445 × 445 mm' },
  { key: 'T07', size: '900 × 445 × 600 mm' },
  { key: 'T08', size: '1200 × 600 × 600 mm' },
].map(({ key, size }) => ({
  key,
  label: key,
  size,
  kit: 'full',
  kits,
  recipe: 'H1',
  ownRecipe: '',
  recipes: [],
  count: 1,
  section: drawnSections[key] ?? flat,
  issued: false,
}));

/** This many sizes, repeating the three fixed ones. */
export function manySizes(count: number): readonly HeadView[] {
  return Array.from({ length: count }, (_, at) => heads[at % heads.length]).flatMap((head, at) =>
    head ? [{ ...head, key: at < heads.length ? head.key : `${head.key}#${at}` }] : [],
  );
}

export function standInBench(sizes: readonly HeadView[] = heads): StandInBench {
  const open = signal(new Set(figures.filter((section) => section.open).map((section) => section.title)));
  const all = signal(new Set<string>());
  const columns = signal(sizes);
  const locals = signal(new Map<string, string>());
  const view = computed<BenchView>(() => {
    const boxes = new Map<string, BoxView>();
    const written = locals.value;
    return {
      recipe: { title: 'H1 Humid planted', aside: 'laid flat for this job' },
      rows: figures.flatMap((section) => rowsOf(section, open.value.has(section.title), all.value.has(section.title))),
      foot: footRows,
      columns: columns.value,
      boxOf: (row, column) => {
        const key = `${row} ${column}`;
        const known = boxes.get(key) ?? boxAt(row, column, written.get(key));
        if (known) boxes.set(key, known);
        return known;
      },
      footOf,
    };
  });
  return {
    view,
    write: (changes) => {
      locals.value = new Map([
        ...locals.value,
        ...changes.map(({ row, column, text }) => [`${row} ${column}`, text] as const),
      ]);
    },
    clear: (places) => {
      const gone = new Set(places.map(({ row, column }) => `${row} ${column}`));
      locals.value = new Map([...locals.value].filter(([key]) => !gone.has(key)));
    },
    fold: (section) => (open.value = toggled(open.value, section)),
    showAll: (section) => (all.value = toggled(all.value, section)),
    setCount: (key, count) =>
      (columns.value = columns.value.map((head) => (head.key === key ? { ...head, count } : head))),
    setKit: (key, kit) => (columns.value = columns.value.map((head) => (head.key === key ? { ...head, kit } : head))),
  };
}

function toggled(set: ReadonlySet<string>, name: string): Set<string> {
  const next = new Set(set);
  if (!next.delete(name)) next.add(name);
  return next;
}

function rowsOf(section: DrawnSection, open: boolean, all: boolean): readonly (SectionRow | LineRow)[] {
  const head: SectionRow = {
    kind: 'section',
    id: section.title,
    title: section.title,
    open,
    more: open ? section.more : '',
    all,
    holds: '',
  };
  const lines = section.lines.filter((line) => open && (all || !line.tucked));
  return [
    head,
    ...lines.map(({ name, label, aside, unit, inset }) => ({
      kind: 'line' as const,
      id: name,
      label,
      aside,
      unit,
      inset,
    })),
  ];
}

function boxAt(row: string, column: string, local: string | undefined): BoxView | undefined {
  const section = /^[A-Z]/.test(row) ? figures.find((each) => each.title === row) : undefined;
  const index = heads.findIndex((head) => column.startsWith(head.key));
  if (section) return headline(section, section.figures[index], column);
  const line = drawnLines.get(row);
  return line && boxOf(line, index, column, local);
}

function headline({ headline: said }: DrawnSection, figure: string | undefined, column: string): BoxView | undefined {
  if (!figure) return undefined;
  return {
    form: 'flat',
    source: 'house',
    look: 'headline',
    said,
    figure,
    spoken: `${column}, ${said} ${figure}`,
    entry: '',
    copied: figure,
    closed: true,
  };
}

function boxOf(line: DrawnLine, index: number, column: string, local: string | undefined): BoxView {
  const drawn = readBox(line.boxes[index] ?? '');
  const shown =
    local === undefined
      ? drawn
      : { ...drawn, source: 'local' as const, look: 'plain' as const, said: 'local', figure: local, sign: undefined };
  const { sign, ...box } = shown;
  const figure = [box.figure, line.unit].filter(Boolean).join(' ');
  return {
    ...box,
    ...(sign && { sign }),
    spoken: [line.label, column, figure, box.said].filter(Boolean).join(', '),
    entry: box.figure,
    copied: box.figure,
    closed: false,
  };
}

/** A cell as written in the fixture: `form|state|sign|words|figure`. */
function readBox(
  drawn: string,
): Pick<BoxView, 'form' | 'source' | 'look' | 'said' | 'figure'> & { readonly sign: SignName | undefined } {
  const [form, state = '', sign = '', said = '', figure = ''] = drawn.split('|');
  return {
    form: form === 'well' ? 'well' : 'flat',
    source: state === 'local' || state === 'job' ? state : 'house',
    look: looks[state] ?? 'plain',
    said,
    figure,
    sign: signs.find((each) => each === sign),
  };
}

const footIds = ['hours', 'cost', 'net', 'tax', 'gross', 'deposit', 'flags'] as const;

const footRows: readonly FootRow[] = [
  ['hours', 'Hours', 'h'],
  ['cost', 'Cost', 'cr'],
  ['net', 'Price before tax', 'cr'],
  ['tax', 'Tax', 'cr'],
  ['gross', 'Price', 'cr'],
  ['deposit', 'Deposit', 'cr'],
  ['flags', 'Flags', ''],
].map(([id = '', label = '', unit = '']) => ({
  kind: 'foot',
  id: footIds.find((each) => each === id) ?? 'flags',
  label,
  unit,
}));

const sums: Readonly<Record<FootId, readonly string[]>> = {
  mass: [],
  hours: ['9.25', '12.25', '15.50'],
  cost: ['796.44', '1,312.89', '1,841.16'],
  net: ['1,159.90', '1,930.72', '2,724.73'],
  tax: ['128.98', '214.63', '302.05'],
  gross: ['1,288.88', '2,145.35', '3,026.78'],
  deposit: ['520.00', '860.00', '1,215.00'],
  flags: ['', '', ''],
};

function footOf(row: FootId, column: string): FootBox {
  const index = heads.findIndex((head) => column.startsWith(head.key));
  const figure = sums[row][index] ?? '';
  const flags =
    row === 'cost'
      ? [{ look: 'old' as const, sign: 'old' as const, says: '1 old price' }]
      : row === 'flags'
        ? (flagsOf[index] ?? [])
        : [];
  const spoken = [column, figure, ...flags.map((flag) => flag.says)].filter(Boolean).join(', ');
  return { figure, flags, spoken: `${row}, ${spoken}`, copied: figure };
}

const flagsOf: readonly FootBox['flags'][] = [
  [{ look: 'range', sign: 'range', says: '1 out of range' }],
  [
    { look: 'stop', sign: 'stop', says: '1 stop' },
    { look: 'watch', sign: 'watch', says: '1 watch' },
    { look: 'advice', sign: 'advice', says: '1 advice' },
  ],
  [
    { look: 'watch', sign: 'watch', says: '1 watch' },
    { look: 'advice', sign: 'advice', says: '1 advice' },
    { look: 'needs', sign: 'need', says: '1 needs a figure' },
  ],
];
