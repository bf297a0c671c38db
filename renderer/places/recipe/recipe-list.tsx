import type { Signal } from '@preact/signals';
import { useMemo, useRef } from 'preact/hooks';
import { Sign } from '#renderer/frame/sign.tsx';
import { useKeepFocus } from '#renderer/frame/use-keep-focus.ts';
import { ChoiceField, Fields } from '#renderer/kit/field.tsx';
import type { EntryMenu } from '#renderer/kit/context-menu.tsx';
import { Menu } from '#renderer/kit/menu.tsx';
import { From } from '#renderer/kit/from.tsx';
import { sourceMarks } from '#shared-calc/fields/source.ts';
import { markWords } from '#shared-calc/bench/source-words.ts';
import { Flag } from '#renderer/kit/flag.tsx';
import { Table } from '#renderer/kit/table.tsx';
import { boxStanding } from '#renderer/store/box-words.ts';
import { boxFigure } from '#shared-calc/quantity/figure-words.ts';
import type { LineFace } from '#renderer/store/line-faces.ts';
import { isListed, type RecipeStore } from '#renderer/store/recipe-store.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { RuleField } from '#renderer/writing/rule-field.tsx';
import type { RuleHelp } from '#renderer/writing/rule-help.ts';
import { houseTextOf } from '#shared-calc/recipe/range-text.ts';
import { entryText } from '#shared-calc/recipe/typed-text.ts';
import { dragLines } from './drag-line.ts';
import type { LineHands } from './line-hands.ts';
import type { LineMark } from '#shared-calc/recipe/family-marks.ts';
import family from './family-part.module.css';
import css from './recipe-place.module.css';
import { Button } from '#renderer/kit/button.tsx';

/** The line whose rule is being edited. */
export interface Editing {
  readonly line: string;
  /** The first letter, if it was typed over the old text. */
  readonly typed?: string;
}

interface ListParts {
  readonly store: RecipeStore;
  readonly editing: Signal<Editing | undefined>;
  readonly hands: LineHands;
}

/** All lines of the recipe by section: name, rule or figure, and its value on the reference size. */
export function RecipeList({ store, editing, hands }: ListParts) {
  const drag = useMemo(() => dragLines(hands.put), [hands]);
  const tank = store.tank.value?.id ?? '';
  const marks = new Map(store.marks.value.map((mark) => [mark.line, mark]));
  const sections = Map.groupBy(store.listed.value, ({ line }) => line.section);
  return (
    <div class={css['recipeLines']} {...drag}>
      <FromFilterField store={store} />
      <Table<LineFace>
        look="ledger"
        label="Lines of the house recipe"
        onKeyDown={(event) => walk(event, store, editing)}
        groups={[...sections].map(([section, rows]) => ({
          key: section,
          head: <SectionHead section={section} acts={hands.section(section)} />,
          rows,
        }))}
        keyOf={({ line }) => line.id}
        mark={({ line }) => (store.chosen.value === line.name ? 'here' : undefined)}
        menu={hands.menu}
        columns={[
          {
            head: 'Line',
            names: true,
            cell: ({ line, label }) => <LineName line={line} label={label} mark={marks.get(line.id)} />,
          },
          {
            head: 'Figure or rule of the house',
            cell: (face) => <RuleCell face={face} store={store} editing={editing} />,
          },
          { head: 'From', cell: ({ line }) => isMarked(line) && <From of={line} /> },
          {
            head: tank === '' ? '' : `On ${tank}`,
            figure: true,
            cell: (face) => <Figure face={face} store={store} />,
          },
        ]}
      />
    </div>
  );
}

function SectionHead({ section, acts }: { readonly section: string; readonly acts: EntryMenu['acts'] }) {
  return (
    <>
      {section} <Menu label={`Section ${section}`} acts={acts} />
    </>
  );
}

function FromFilterField({ store: { from, faces } }: { readonly store: RecipeStore }) {
  const options = filters.flatMap((value) => {
    const count = faces.value.all.filter(({ line }) => isListed(line, value)).length;
    const label = value === 'all' ? 'every line' : markWords(value === 'none' ? undefined : value);
    return count > 0 || value === from.value ? [{ value, label: `${label} (${count})` }] : [];
  });
  const choose = (word: string) => (from.value = filters.find((value) => value === word) ?? 'all');
  return (
    <Fields look="short">
      <ChoiceField label="Lines with figures from" value={from.value} options={options} choose={choose} />
    </Fields>
  );
}

const filters = ['all', ...sourceMarks, 'none'] as const;

/** A given figure says where it is from, or that it does not say so. */
function isMarked({ role, source }: Line): boolean {
  return role === 'given' || source !== undefined;
}

function LineName({ line, label, mark }: Pick<LineFace, 'line' | 'label'> & { readonly mark: LineMark | undefined }) {
  return (
    <span class={line.inset ? css['inset'] : undefined} draggable title="Draw it to another place">
      {label} <code>{line.name}</code>
      {mark && <span class={family['departs']}>{mark.moved.length > 0 ? `${mark.is}, compare` : mark.is}</span>}
    </span>
  );
}

interface RowParts extends Pick<ListParts, 'store' | 'editing'> {
  readonly face: LineFace;
}

function RuleCell({ face, store, editing }: RowParts) {
  const { name } = face.line;
  const isWriting = editing.value?.line === name;
  const cell = useRef<HTMLDivElement>(null);
  useKeepFocus(cell, isWriting, () => focusLine(name));
  const Rule = isWriting ? Writing : RuleOf;
  return (
    <div ref={cell} data-line={name} class={isWriting ? css['writing'] : lookOf(face.line)}>
      <Rule face={face} store={store} editing={editing} />
    </div>
  );
}

/** One Tab stop: the selected line, or the first. */
function RuleOf({ face: { line, label }, store, editing }: RowParts) {
  const first = store.listed.value[0]?.line.name;
  const here = store.listed.value.find((each) => each.line.name === store.chosen.value)?.line.name;
  const text = entryText(houseTextOf(line), store.faces.value.display);
  return (
    <Button
      look="bare"
      tabIndex={(here ?? first) === line.name ? 0 : -1}
      aria-label={`${label}: ${text === '' ? whenEmpty(line.role) : text}`}
      onClick={() => (store.chosen.value = line.name)}
      onFocus={() => (store.chosen.value = line.name)}
      onDblClick={() => open(line, editing)}
    >
      <code>{text === '' ? whenEmpty(line.role) : text}</code>
    </Button>
  );
}

function lookOf({ role }: Line): string | undefined {
  return role === 'given' ? `${css['ruleOf']} ${css['given']}` : css['ruleOf'];
}

function whenEmpty(role: Line['role']): string {
  if (role === 'tank') return 'from the tank book';
  return role === 'given' ? 'no figure yet' : 'no rule yet';
}

function Figure({ face, store }: { readonly face: LineFace; readonly store: RecipeStore }) {
  const box = store.box(face.line.name);
  if (!box) return null;
  const faces = store.faces.value;
  const { look, sign, said } = boxStanding(box, faces);
  if (face.line.role === 'check' || box.value === undefined) {
    return (
      <Flag state={look}>
        {sign && <Sign name={sign} />}
        {said}
      </Flag>
    );
  }
  const figure = boxFigure(box, face.line.unit, faces.display);
  return <>{face.unit === '' ? figure : `${figure}\u00a0${face.unit}`}</>;
}

const noHelp: RuleHelp = { check: () => ({ faults: [], marks: [] }), complete: () => [], hint: () => undefined };

function Writing({ face: { line, label }, store, editing }: RowParts) {
  const typed = editing.value?.typed;
  const done = () => (editing.value = undefined);
  return (
    <RuleField
      text={typed ?? entryText(houseTextOf(line), store.faces.value.display)}
      begun={typed !== undefined}
      label={`${label} of the house`}
      help={store.helpFor(line.name) ?? noHelp}
      settle={(text) => {
        const refused = store.write(line.name, text);
        if (refused === undefined) done();
        return refused;
      }}
      cancel={done}
      form="panel"
      focus="end"
    />
  );
}

function open({ role, name }: Line, editing: Signal<Editing | undefined>, typed?: string): void {
  if (role !== 'tank') editing.value = { line: name, ...(typed !== undefined && { typed }) };
}

/** Arrows move between lines, Enter and F2 edit, a letter or digit replaces the text. */
function walk(event: KeyboardEvent, store: RecipeStore, editing: Signal<Editing | undefined>): void {
  if (editing.peek() !== undefined || isHeld(event)) return;
  const lines = store.listed.peek().map((face) => face.line);
  const at = lines.findIndex((line) => line.name === store.chosen.peek());
  const line = lines[at];
  const to = lines[stepTo(event.key, at, lines.length)];
  if (to) focusLine(to.name);
  else if (line && (event.key === 'Enter' || event.key === 'F2')) open(line, editing);
  else if (line && /^[^\s/?]$/u.test(event.key)) open(line, editing, event.key);
  else return;
  event.preventDefault();
}

function isHeld({ ctrlKey, metaKey, altKey, isComposing }: KeyboardEvent): boolean {
  return ctrlKey || metaKey || altKey || isComposing;
}

function stepTo(key: string, at: number, count: number): number {
  const steps: Readonly<Record<string, number>> = {
    ArrowDown: at + 1,
    ArrowUp: at - 1,
    Home: 0,
    End: count - 1,
  };
  return steps[key] ?? -1;
}

/** Gives the keyboard to a line of the list. */
export function focusLine(name: string): void {
  document.querySelector<HTMLElement>(`[data-line="${CSS.escape(name)}"] button`)?.focus();
}
