import { functionInRules } from '#shared-calc/trade/all-functions.ts';
import type { PutInView, SourceView } from '#renderer/panel/panel-view.ts';
import { unitWords } from '#shared-calc/quantity/unit-words.ts';
import type { Box } from '#shared-calc/bench/bench-types.ts';
import { decimalText } from '#shared-calc/quantity/read-number.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { namesIn, walk, type Rule } from '#shared-calc/rule/tree.ts';
import { workingOf } from '#shared-calc/rule/working.ts';
import { noSource, type Sourced } from '#shared-calc/fields/source.ts';
import { markWords } from '#shared-calc/bench/source-words.ts';
import { calledLine } from '#shared-calc/words/called-by-words.ts';
import type { BoxParts } from './box-view.ts';
import { figureWords } from '#shared-calc/quantity/figure-words.ts';

/** Mark where a figure begins and ends in the working, so that it can be set in bold. */
const [OPEN, CLOSE] = ['\u0001', '\u0002'] as const;

/** The rule of a cell with its figures put in, one decimal finer than the cell, and the same in words. */
export function putInView(box: Box, parts: BoxParts): PutInView | undefined {
  const { rule, value } = box;
  if (!rule || value === undefined) return undefined;
  const { faces } = parts;
  const fine = { ...faces.display, extraDecimals: 1 };
  const strong = (words: string) => `${OPEN}${words}${CLOSE}`;
  const [figures = '', words = ''] = workingOf(rule, {
    figureOf: (name) => strong(figureOf(name, parts, fine)),
    labelOf: (name) => calledLine(faces, name),
    resultText: strong(figureWords(value, box.line.unit, fine)),
    titleOf: (fn) => functionInRules(fn)?.title,
    literalText: (figure, unit) => literalWords(figure, unit, faces.display),
    between: faces.display.decimalComma ? ';' : ',',
  });
  return { pieces: piecesOf(figures), words: words.replaceAll(OPEN, '').replaceAll(CLOSE, '') };
}

function figureOf(name: string, { bench, column, faces }: BoxParts, display: BoxParts['faces']['display']): string {
  const face = faces.of(name);
  const value = face && bench.box(column, name).value;
  return face && value !== undefined
    ? figureWords(value, face.line.unit, display)
    : `${calledLine(faces, name)} (not known yet)`;
}

function literalWords(value: number, unit: string, { currency, decimalComma }: Display): string {
  const words = unitWords(unit, currency);
  const figure = decimalText(String(cleanNoise(value)), decimalComma);
  return words === '' ? figure : `${figure}\u00a0${words}`;
}

function piecesOf(text: string): PutInView['pieces'] {
  return text
    .split(OPEN)
    .flatMap((part, at) => {
      if (at === 0) return [{ text: part, strong: false }];
      const [figure = '', rest = ''] = part.split(CLOSE);
      return [
        { text: figure, strong: true },
        { text: rest, strong: false },
      ];
    })
    .filter((piece) => piece.text !== '');
}

/** Where each figure in a rule came from. Figures written in the rule itself come last. */
export function sourcesOf(box: Box, parts: BoxParts): readonly SourceView[] {
  if (!box.rule) return [];
  const lines = namesIn(box.rule).flatMap((name) => sourceOf(name, parts));
  const written = literalsIn(box.rule, parts.faces.display);
  if (written.length === 0) return lines;
  return [
    ...lines,
    {
      name: '',
      label: written.length === 1 ? 'figure' : 'figures',
      figure: written.join(parts.faces.display.decimalComma ? '; ' : ', '),
      from: 'written in this rule',
      steps: false,
    },
  ];
}

function sourceOf(name: string, { bench, column, called, faces }: BoxParts): readonly SourceView[] {
  const face = faces.of(name);
  if (!face) return [];
  const box = bench.box(column, name);
  const figure = box.value === undefined ? '' : figureWords(box.value, face.line.unit, faces.display);
  return [{ name, label: face.label, figure, from: fromWords(box, called), steps: true }];
}

function fromWords(box: Box, called: string): string {
  const { source, rule, value } = box;
  const what = rule ? 'rule' : 'figure';
  if (source === 'tank') return value === undefined ? `not measured in ${called}` : `tank book, ${called}`;
  if (source === 'local') return `local ${what} of ${called}`;
  if (source === 'job') return `${what} for the whole job`;
  const whose = { house: 'house', survey: 'survey', kind: 'animal kind' }[source];
  if (value === undefined && !rule) return `${whose}, no figure yet`;
  return source === 'house' && !rule ? houseFigureWords(box.line) : `${whose} ${what}`;
}

function houseFigureWords({ source }: Sourced): string {
  return source === undefined ? `house figure, ${noSource}` : markWords(source);
}

function literalsIn(rule: Rule, display: Display): readonly string[] {
  const found = new Set<string>();
  walk(rule, (part) => {
    if (part.part === 'number') found.add(literalWords(part.value, part.unit?.symbol ?? 'number', display));
    if (part.part === 'text') found.add(part.text);
  });
  return [...found];
}
