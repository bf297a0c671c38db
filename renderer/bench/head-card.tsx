import { useComputed } from '@preact/signals';
import type { ReadonlySignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { SectionDrawing } from '#renderer/drawing/section-drawing.tsx';
import { Sign } from '#renderer/frame/sign.tsx';
import { Menu } from '#renderer/kit/menu.tsx';
import type { BenchActs } from './bench-acts.ts';
import type { BenchMetrics } from './bench-metrics.ts';
import { sizeActs } from './bench-menus.ts';
import { SizeName } from './size-name.tsx';
import type { BenchView, HeadView } from './view-model.ts';
import css from './head-card.module.css';

/** The state behind the cards over the strips and over the names. */
export interface HeadState {
  readonly heads: ReadonlySignal<BenchView>;
  readonly metrics: ReadonlySignal<BenchMetrics>;
  /** The strip of the selected cell. */
  readonly at: ReadonlySignal<string | undefined>;
  readonly acts: BenchActs;
}

/** The card over a strip: tank, inside size, kit, count, and the section drawing on the plank. */
export function HeadCard({ state, column }: { readonly state: HeadState; readonly column: string }) {
  const before = useRef<HeadView | undefined>(undefined);
  const shown = useComputed(() => {
    const now = state.heads.value.columns.find((each) => each.key === column);
    before.current = sameHead(before.current, now) ? before.current : now;
    return before.current;
  });
  const at = useComputed(() => state.at.value === column);
  const head = shown.value;
  if (!head) return null;
  return (
    <div class={at.value ? `${css['card']} ${css['at']}` : css['card']} data-card>
      <div class={css['name']}>
        <b title={head.label}>{head.label}</b>
        {head.ownRecipe !== '' && <span title="Built by this recipe">{head.ownRecipe}</span>}
        <span class={css['size']} title={head.size}>
          {head.label.length > 3 ? sizeInShort(head.size) : head.size}
        </span>
      </div>
      <Picks head={head} state={state} />
      <SectionDrawing figures={head.section} scale={state.metrics.value.scale} of={head.label} />
    </div>
  );
}

/** `900×445×600`, short so that the name has room; the drawing's scale gives the unit. */
function sizeInShort(size: string): string {
  return size.replaceAll(' × ', '×').replace(/(?<=\d) \w+$/u, '');
}

/** An edit that does not change a card redraws nothing. */
function sameHead(a: HeadView | undefined, b: HeadView | undefined): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}

function Picks({ head, state }: { readonly head: HeadView; readonly state: HeadState }) {
  const { acts } = state;
  return (
    <div class={css['picks']}>
      <span class={`${css['well']} ${css['kit']}`}>
        <select
          aria-label={`Kit level of ${head.label}`}
          value={head.kit}
          disabled={head.issued}
          onChange={(event) => acts.setKit(head.key, event.currentTarget.value)}
        >
          {head.kits.map(({ value, label }) => (
            <option key={value} value={value}>
              {label}
            </option>
          ))}
        </select>
        <Sign name="fold" />
      </span>
      <div class={css['countRow']}>
        {!head.issued && <SizeActs head={head} state={state} />}
        <CountField head={head} acts={acts} />
      </div>
    </div>
  );
}

/** The recipe of a size, from the size's menu. */
function SizeRecipe({ head, acts }: { readonly head: HeadView; readonly acts: BenchActs }) {
  return (
    <label class={css['sizeName']}>
      Recipe{' '}
      <select
        class={css['well']}
        aria-label={`Recipe of ${head.label}`}
        value={head.recipe}
        onChange={(event) => acts.setRecipe(head.key, event.currentTarget.value)}
      >
        {head.recipes.map(({ value, label }) => (
          <option key={value} value={value}>
            {label}
          </option>
        ))}
      </select>
    </label>
  );
}

function CountField({ head, acts }: { readonly head: HeadView; readonly acts: BenchActs }) {
  return (
    <label class={`${css['well']} ${css['count']}`}>
      <span aria-hidden="true">{'×\u00a0'}</span>
      <input
        type="text"
        inputMode="numeric"
        aria-label={`How many of ${head.label}`}
        value={head.count}
        disabled={head.issued}
        maxLength={3}
        onChange={(event) => settleCount(event.currentTarget, head, acts)}
      />
    </label>
  );
}

/** Reads a count: a whole number from 1 to 999. Anything else restores the previous count. */
function settleCount(field: HTMLInputElement, head: HeadView, acts: BenchActs): void {
  const count = Number(field.value);
  if (Number.isInteger(count) && count >= 1 && count <= 999) acts.setCount(head.key, count);
  else {
    field.value = String(head.count);
    acts.refuse(`How many of ${head.label}: write a whole number from 1 to 999.`);
  }
}

function SizeActs({ head, state: { heads, acts } }: { readonly head: HeadView; readonly state: HeadState }) {
  return (
    <Menu label={`Acts for ${head.label}`} acts={sizeActs(heads.value, head, acts)}>
      <SizeName head={head} acts={acts} />
      <SizeRecipe head={head} acts={acts} />
    </Menu>
  );
}

/** The card over the names: the house recipe and the scale of all drawings. */
export function RecipeCard({ state }: { readonly state: HeadState }) {
  const { recipe } = state.heads.value;
  const { scale } = state.metrics.value;
  const bar = state.heads.value.columns[0]?.section.inches ? { mm: 508, says: '20 in' } : { mm: 500, says: '500 mm' };
  return (
    <div class={css['recipe']}>
      <p>
        House recipe <b>{recipe.title}</b> {recipe.aside}
      </p>
      <p>
        <span class={css['scale']} aria-hidden="true" style={{ width: `${bar.mm * scale}px` }} />
        {bar.says}, side on, front at left
      </p>
    </div>
  );
}
