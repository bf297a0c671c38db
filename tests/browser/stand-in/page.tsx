import { helpState } from '#renderer/help/help-state.ts';
import { signal } from '@preact/signals';
import type { ComponentProps } from 'preact';
import type { BenchActs } from '#renderer/bench/bench-acts.ts';
import type { BenchController } from '#renderer/bench/bench-controller.ts';
import { BenchStrips } from '#renderer/bench/bench-place.tsx';
import type { BoxPlace } from '#renderer/bench/view-model.ts';
import type { QuietLineView } from '#renderer/frame/frame-view.ts';
import { mountPage } from '#renderer/mount-page.tsx';
import { WorkingPanel } from '#renderer/panel/working-panel.tsx';
import { manySizes, standInBench } from './stand-in-bench.ts';
import { DrawnShapes } from './drawn-shapes.tsx';
import { drawnHelp, drawnPanel } from './stand-in-panel.ts';

/** The page over fixed figures, for viewing it without the real store. */
const count = Number(/^#\/bench\/(\d+)$/.exec(location.hash)?.[1] ?? 3);
const bench = standInBench(manySizes(count));
const line = signal<QuietLineView>({ saved: 'Saved 14:02', undo: 'drain gap of T08 to 15 mm' });
const said = (words: string, refused: boolean) => (line.value = { ...line.value, said: { words, refused } });
let chosen: BoxPlace | undefined;
const grid: { current: BenchController | null } = { current: null };
const stood = (made: BenchController | null) => {
  grid.current = made;
  made?.go({ row: 'drain_gap', column: 'T08' });
};

const panelActs: ComponentProps<typeof WorkingPanel>['acts'] = {
  help: drawnHelp,
  write: (text) => (text.includes('hieght') ? 'Nothing called so.' : undefined),
  stepDown: () => undefined,
  stepUp: () => undefined,
  backToHouse: () => undefined,
  forWholeJob: () => undefined,
  alwaysForTank: () => undefined,
  sendToHouse: () => undefined,
  clientAsked: () => undefined,
  writeNote: () => undefined,
  workCures: (tell) => {
    tell([]);
    return () => undefined;
  },
  takeCure: () => undefined,
  goTo: () => undefined,
  leave: () => undefined,
};

const acts: BenchActs = {
  write: (changes) => {
    const wrong = changes.find((change) => change.text.includes('hieght'));
    if (wrong) return `Nothing called ${wrong.text}. Did you mean dam_height?`;
    bench.write(changes);
    said(`wrote ${changes.map(({ row, column, text }) => `${row} of ${column} ${text}`).join('; ')}`, false);
    return undefined;
  },
  clear: (places) => {
    bench.clear(places);
    said(`${places.length} back to house`, false);
  },
  refuse: (sentence) => said(sentence, true),
  helpFor: () => drawnHelp,
  choose: (place) => {
    chosen = place;
    document.body.dataset['chosen'] = place ? `${place.row} ${place.column}` : '';
  },
  fold: bench.fold,
  showAll: bench.showAll,
  setKit: bench.setKit,
  setCount: bench.setCount,
  takeSize: () => said('take a size', false),
  takeAgain: (column) => said(`${column} again`, false),
  copySize: (column) => said(`${column} copied`, false),
  nameSize: () => undefined,
  setRecipe: (column, recipe) => said(`${column} by ${recipe}`, false),
  putAway: (column) => said(`${column} away`, false),
  moveSize: (column, to) => said(`${column} to ${to}`, false),
  sendToHouse: () => undefined,
  holdForJob: () => undefined,
  keepForTank: () => undefined,
};

mountPage({
  workshop: signal('Withy Street\nTerrarium Workshop'),
  line,
  lineActs: { undo: () => said('undo', false), redo: () => said('redo', false) },
  keys: [
    ['F2', 'edit'],
    ['/', 'find'],
    ['F8', 'next flag'],
    ['F1', 'help'],
  ],
  refuse: (sentence) => said(sentence, true),
  moveOn: () => undefined,
  help: helpState(),
  nextMoved: () => undefined,
  nextFlag: () => said(`next flag after ${chosen?.row ?? 'none'}`, false),
  place: (route) =>
    route.place === 'bench'
      ? {
          about: 'Ferry waiting hall',
          aside: 'three sizes side by side',
          look: 'bench',
          acts: [
            { label: 'Make a quote', run: () => undefined },
            { label: 'Take a size', main: true, run: acts.takeSize },
          ],
          work: <BenchStrips view={bench.view} acts={acts} moved={signal(new Map())} grid={stood} />,
          sidePanel: <WorkingPanel view={drawnPanel} acts={panelActs} />,
          find: {
            label: 'Find a line, a tank or a place',
            placeholder: 'Find a line',
            options: bench.view.value.rows.map((row) => (row.kind === 'line' ? row.label : row.title)),
            go: (words) => {
              const row = bench.view.value.rows.find(
                (each) => each.kind === 'line' && each.label.toLowerCase().includes(words.toLowerCase()),
              );
              if (row) grid.current?.go({ row: row.id, column: 'T07' });
              return row !== undefined;
            },
          },
        }
      : route.place === 'tank-book'
        ? { about: '', aside: '', acts: [], look: 'drawn-shapes', work: <DrawnShapes /> }
        : {
            about: '',
            aside: '',
            acts: [],
            work: <p>Drawn figures stand on the size bench.</p>,
          },
});
