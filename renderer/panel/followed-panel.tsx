import type { ReadonlySignal } from '@preact/signals';
import { useSignal, useSignalEffect } from '@preact/signals';
import { afterFrame } from '#renderer/frame/after-frame.ts';
import type { PanelActs, PanelView } from './panel-view.ts';
import { WorkingPanel } from './working-panel.tsx';

interface Followed {
  readonly panel: ReadonlySignal<PanelView | undefined>;
  /** Changes whenever the panel may have changed. */
  readonly turn: ReadonlySignal<object>;
  readonly acts: PanelActs;
}

/** The working panel, a frame behind the cells: an edit is painted in its cell before its working is drawn. */
export function FollowedPanel({ panel, turn, acts }: Followed) {
  const shown = useSignal(panel.peek());
  useSignalEffect(() => {
    void turn.value;
    return afterFrame(() => (shown.value = panel.peek()));
  });
  return <WorkingPanel view={shown.value} acts={acts} />;
}
