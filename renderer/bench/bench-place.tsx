import { actNames } from '#shared-calc/words/act-names.ts';
import type { ReadonlySignal } from '@preact/signals';
import { useComputed, useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { Ref } from 'preact';
import { styleNonce } from '#renderer/look/style-nonce.ts';
import { Sign } from '#renderer/frame/sign.tsx';
import { Button } from '#renderer/kit/button.tsx';
import type { BenchActs } from './bench-acts.ts';
import { benchController, type BenchController } from './bench-controller.ts';
import type { BenchMetrics } from './bench-metrics.ts';
import type { BenchView } from './view-model.ts';
import gridLook from '#renderer/grid/grid.module.css';
import css from './bench.module.css';

interface BenchParts {
  readonly view: ReadonlySignal<BenchView>;
  readonly acts: BenchActs;
  /** Cells that the last edit moved. */
  readonly moved: ReadonlySignal<ReadonlyMap<string, ReadonlySet<string>>>;
  /** Receives the controller once the grid is on the page, for finding a line and the next flag. */
  readonly grid: Ref<BenchController>;
}

/** The size bench: the grid, and next to its strips a dashed tank if there is room for another size. */
export function BenchStrips({ view, acts, moved, grid }: BenchParts) {
  const host = useRef<HTMLDivElement>(null);
  const metrics = useSignal<BenchMetrics | undefined>(undefined);
  useEffect(() => {
    if (!host.current) return undefined;
    const measured = (now: BenchMetrics) => (metrics.value = now);
    const made = benchController({
      host: host.current,
      view: view.peek(),
      acts,
      nonce: styleNonce(document),
      measured,
    });
    give(grid, made);
    const follow = view.subscribe((next) => made.show(next));
    const followMoved = moved.subscribe((cells) => made.markMoved(cells));
    return () => {
      follow();
      followMoved();
      give(grid, null);
      made.destroy();
    };
  }, []);
  const now = metrics.value;
  const sizes = useComputed(() => view.value.columns.length).value;
  return (
    <div
      class={now?.narrow ? `${css['strips']} ${css['narrow']}` : css['strips']}
      style={now && { '--plank-height': `${now.plank}px` }}
    >
      <div ref={host} class={`${gridLook['grid']} ${css['grid']}`} />
      {now && <div class={css['plank']} aria-hidden="true" style={{ top: `${now.head}px` }} />}
      {now?.spare && <SpareTank metrics={now} sizes={sizes} takeSize={acts.takeSize} />}
      {sizes === 0 && <NoSize takeSize={acts.takeSize} />}
    </div>
  );
}

function give(ref: Ref<BenchController>, grid: BenchController | null): void {
  if (typeof ref === 'function') ref(grid);
  else if (ref) ref.current = grid;
}

interface Spare {
  readonly metrics: BenchMetrics;
  readonly sizes: number;
  readonly takeSize: () => void;
}

function SpareTank({ metrics: { names, strip, head, scale }, sizes, takeSize }: Spare) {
  const left = names + strip * sizes;
  const width = 445 * scale;
  const height = 600 * scale;
  return (
    <div class={css['spare']} style={{ left: `${left}px`, width: `${strip}px`, height: `${head}px` }}>
      <p>
        <Button look="plain" onClick={takeSize}>
          Take a size
        </Button>{' '}
        from the tank book
      </p>
      <svg width={width + 2} height={height + 1} aria-hidden="true" focusable="false">
        <path d={`M1 1V${height}H${width}V1`} />
      </svg>
    </div>
  );
}

function NoSize({ takeSize }: { readonly takeSize: () => void }) {
  return (
    <p class={css['noSize']}>
      <Sign name="advice" /> No size stands here yet. <Button onClick={takeSize}>{actNames.takeSize}</Button>
    </p>
  );
}
