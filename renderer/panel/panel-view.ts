import type { RangeSaid } from '#shared-calc/words/say-range.ts';
import type { FigureFrom } from '#shared-calc/bench/rests-on.ts';
import type { Sourced } from '#shared-calc/fields/source.ts';
import type { RuleHelp } from '#renderer/writing/rule-help.ts';

export interface FigureView {
  readonly figure: string;
  /** As shown; empty if the figure needs none. */
  readonly unit: string;
}

/** The state of a cell: one line for its state, one for each flag, each with its reason. */
export interface StandingView {
  readonly look:
    | 'local'
    | 'job'
    | 'needs'
    | 'range'
    | 'waiting'
    | 'loop'
    | 'old'
    | 'issued'
    | 'stop'
    | 'watch'
    | 'advice'
    | 'holds';
  readonly words: string;
}

/** A rule with its figures put in; `strong` pieces are the figures. */
export interface PutInView {
  readonly pieces: readonly { readonly text: string; readonly strong: boolean }[];
  /** The same in words; empty if they would add nothing. */
  readonly words: string;
}

export interface SourceView {
  readonly name: string;
  readonly label: string;
  readonly figure: string;
  /** `house rule, from the dam of T08`. */
  readonly from: string;
  /** It has a working of its own to step down to. */
  readonly steps: boolean;
}

export interface EffectView extends FigureView {
  readonly label: string;
  /** With the house value instead, in the same unit. */
  readonly houseFigure: string;
}

export interface HouseView extends FigureView {
  readonly canGoBack: boolean;
  readonly canSend: boolean;
  /** The value of this size alone can be held for every size of the job. */
  readonly canHold: boolean;
  /** Whether the client asked for the local value; `closed` if this cannot be changed. */
  readonly asked: { readonly byClient: boolean; readonly closed: boolean };
  /** `What the local rule changes`. */
  readonly caption: string;
  readonly effects: readonly EffectView[];
}

/** What to mind, and who decides in a sentence; empty if nobody is named. */
export interface CautionView {
  readonly words: string;
  readonly decides: string;
}

/** A check that does not surely hold, or that waits for a figure. */
export interface OpenCheckView {
  readonly says: string;
  /** The figure it minds against its limit; empty if it compares none. */
  readonly figures: string;
  /** Who decides, in a sentence; empty if nobody is named. */
  readonly decides: string;
  /** There are changes that may mend it; they are worked when they are shown. */
  readonly hasCures: boolean;
  readonly waitsFor?: { readonly line: string; readonly label: string };
  /** It is not known yet: nobody asked, or it waits. */
  readonly isUnknown?: boolean;
  /** Where it is asked. */
  readonly askAt?: { readonly says: string; readonly to: string };
}

/** A change that would mend a check, or bring it nearer to holding. */
export interface CureView {
  /** What it is, what it gives, and what it costs. */
  readonly says: string;
  readonly changes: readonly { readonly line: string; readonly text: string }[];
}

/** A figure that a worked one rests on, with its source. */
export interface RestView {
  readonly line: string;
  readonly label: string;
  readonly from: FigureFrom;
}

/** Everything the side panel shows about one cell; a part with nothing to show is absent. */
export interface PanelView {
  /** Another cell, another id: `drain_gap T08`. */
  readonly id: string;
  /** `T08, Drainage`. */
  readonly where: string;
  /** The cells stepped down from, nearest last. */
  readonly steppedFrom: readonly string[];
  readonly title: string;
  readonly answer: FigureView;
  /** Empty if no rule can name it. */
  readonly nameInRules: string;
  readonly standing: readonly StandingView[];
  readonly check?: OpenCheckView;
  /** What guesses make of the figure, and what to measure. */
  readonly ranges: readonly RangeSaid[];
  readonly rule?: { readonly kind: 'Rule' | 'Figure' | 'Choice'; readonly text: string; readonly closed: boolean };
  readonly putIn?: PutInView;
  readonly sources: readonly SourceView[];
  /** Where the house has the figure, or the figures in its rule, from. */
  readonly from?: Sourced;
  /** What a worked figure rests on that nobody can look up: from memory, or without a source. */
  readonly rests: { readonly rows: readonly RestView[]; readonly more: number };
  readonly house?: HouseView;
  readonly cautions: readonly CautionView[];
  readonly note?: { readonly text: string; readonly closed: boolean };
}

export interface PanelActs {
  readonly help: RuleHelp;
  /** Returns a sentence if refused; then the text stays in the field. */
  readonly write: (text: string) => string | undefined;
  readonly stepDown: (name: string) => void;
  readonly stepUp: () => void;
  readonly backToHouse: () => void;
  readonly sendToHouse: () => void;
  readonly forWholeJob: () => void;
  readonly alwaysForTank: () => void;
  readonly clientAsked: (asked: boolean) => void;
  readonly writeNote: (text: string) => void;
  /** Works the cures of the check in the panel, then tells them; returns what calls it off. */
  readonly workCures: (tell: (cures: readonly CureView[]) => void) => () => void;
  readonly takeCure: (cure: CureView) => void;
  /** Selects the box of a line in the same size. */
  readonly goTo: (line: string) => void;
  /** Returns the focus to the bench. */
  readonly leave: () => void;
}
