import type { ReadonlySignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import type { PlaceAct, QuietLineActs, QuietLineView } from './frame-view.ts';
import type { ListPaper } from '#renderer/print/list-paper.ts';
import type { HelpState } from '#renderer/help/help-state.ts';
import type { Route } from './place-route.ts';

/** What a view shows on the page. */
export interface PlaceView {
  readonly about: string;
  readonly aside: string;
  readonly acts: readonly PlaceAct[];
  readonly work: ComponentChildren;
  /** The side panel, if the view has one. */
  readonly sidePanel?: ComponentChildren;
  readonly find?: FindView;
  /** What is printed in place of the page, made when it is; absent where the page is a paper, or has none. */
  readonly printed?: () => ListPaper | undefined;
}

export interface FindView {
  readonly label: string;
  readonly placeholder: string;
  readonly options: readonly string[];
  /** Goes to what has this name; `false` if nothing has. */
  readonly go: (words: string) => boolean;
}

export interface ListedJob {
  readonly id: string;
  readonly title: string;
  readonly state: string;
}

/** The open job, and the jobs to take instead. */
export interface JobSwitchView {
  readonly open: ReadonlySignal<Pick<ListedJob, 'id' | 'title'> | undefined>;
  /** Open jobs first, closed ones last. */
  readonly list: () => readonly ListedJob[];
  /** Opens a job; a view that works on a job stays and shows this one. */
  readonly take: (job: string) => void;
}

/** What the page needs from the store. */
export interface PageView {
  readonly workshop: ReadonlySignal<string>;
  /** None while no book is open. */
  readonly jobs?: JobSwitchView;
  readonly line: ReadonlySignal<QuietLineView>;
  readonly lineActs: QuietLineActs;
  /** Keys listed at the foot of each view. */
  readonly keys: readonly (readonly [key: string, does: string])[];
  /** Call within a component: it follows the signals that are read. */
  readonly place: (route: Route) => PlaceView;
  readonly help: HelpState;
  readonly nextFlag: (back: boolean) => void;
  /** Goes to the next figure that the last edit moved. */
  readonly nextMoved: (back: boolean) => void;
  /** Shows in the status line what failed. */
  readonly refuse: (sentence: string) => void;
  /** The user does something else. */
  readonly moveOn: () => void;
}
