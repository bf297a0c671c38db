import { drawnBench } from './drawn-bench.ts';

export interface DrawnLine {
  readonly name: string;
  readonly label: string;
  readonly aside: string;
  readonly unit: string;
  readonly inset: boolean;
  readonly tucked: boolean;
  readonly boxes: readonly string[];
}

export interface DrawnSection {
  readonly title: string;
  readonly open: boolean;
  readonly more: string;
  readonly headline: string;
  readonly figures: readonly string[];
  readonly lines: readonly DrawnLine[];
}

/** The drawn bench, section by section. */
export const figures: readonly DrawnSection[] = drawnBench.split(/^# /m).slice(1).map(readSection);

function readSection(text: string): DrawnSection {
  const [head = '', ...lines] = text.trimEnd().split('\n');
  const [title = '', open = '', more = '', headline = '', ...shown] = parts(head);
  return { title, open: open === 'open', more, headline, figures: shown, lines: lines.map(readLine) };
}

function readLine(text: string): DrawnLine {
  const [name = '', label = '', aside = '', unit = '', marks = '', ...boxes] = parts(text);
  const [first = ''] = boxes;
  const all = boxes.length === 1 ? [first, first, first] : boxes;
  return { name, label, aside, unit, inset: marks.includes('i'), tucked: marks.includes('t'), boxes: all };
}

function parts(text: string): readonly string[] {
  return text.split(';').map((part) => part.trim());
}
