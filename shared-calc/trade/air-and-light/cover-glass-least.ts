import { firstRefusal } from '#shared-calc/trade/first-refusal.ts';
import { belowZero, notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

const THICKNESSES = [3, 4, 5, 6, 8, 10, 12] as const; // mm
const GRAVITY = 9.80665; // m/s2
const GLASS = 2500; // kg/m3
const HAND = 100; // N, of a hand that leans on it
/** N/mm2. 19.2 of annealed glass over 3.8 for good; three times that for a moment. */
const FOR_GOOD = 5;
const WITH_A_HAND = 15;
const MM = 1000;

/** In m; `force` in N, in the middle. */
interface Pane {
  readonly span: number;
  readonly width: number;
  readonly thickness: number;
  readonly force: number;
}

/** N/mm2 in the middle of a pane that lies on two edges, under its own weight and a force in the middle. */
function stressOf({ span, width, thickness, force }: Pane): number {
  const ownWeight = (0.75 * GLASS * GRAVITY * span ** 2) / thickness;
  return (ownWeight + (1.5 * force * span) / (width * thickness ** 2)) / 1e6;
}

/** The least of the usual thicknesses, mm, that carries its load for good and a hand besides for a moment. */
export const coverGlassLeast = tradeFunction({
  name: 'cover_glass_least',
  title: 'Least cover glass',
  group: 'air and light',
  args: [
    { name: 'span', takes: 'mm', low: 100, high: 1500, says: 'the longer side, between its supports' },
    { name: 'width', takes: 'mm', low: 100, high: 800, says: 'the shorter side' },
    { name: 'load', takes: 'kg', low: 0, high: 10, says: 'lamps that lie on it' },
  ],
  gives: 'mm',
  sum:
    'least of 3, 4, 5, 6, 8, 10, 12 mm with 0.75 x own weight x span^2 / mm^2 + 1.5 x load x span / (width x mm^2) ' +
    'at most 5 N/mm2, and at most 15 with a hand of 100 N besides',
  help: 'How thick a pane on two edges must be to carry lamps for good, and a hand for a moment.',
  examples: [
    { rule: 'cover_glass_least(447 mm, 418 mm, 1.2 kg)', gives: '4 mm' },
    { rule: 'cover_glass_least(897 mm, 418 mm, 2.4 kg)', gives: '6 mm' },
    { rule: 'cover_glass_least(1197 mm, 573 mm, 3.6 kg)', gives: '10 mm' },
  ],
  source: 'plate on two edges; strength of annealed glass over 3.8, as aquarium makers reckon',
  cautions: ['soundGlass', 'glassEdges'],
  compute: ({ span, width, load }) => {
    const wrong = notAboveZero({ 'The span': span, 'The width': width }) ?? belowZero({ 'The load': load });
    if (wrong) return wrong;
    const weight = load * GRAVITY;
    const carries = (thickness: number) => {
      const stress = (force: number) =>
        stressOf({ span: span / MM, width: width / MM, thickness: thickness / MM, force });
      return stress(weight) <= FOR_GOOD + 1e-9 && stress(weight + HAND) <= WITH_A_HAND + 1e-9;
    };
    const least = THICKNESSES.find(carries);
    return (
      least ??
      firstRefusal([[true, 'No pane of 12 mm or less does it: put a rail under it.']]) ??
      Number.POSITIVE_INFINITY
    );
  },
  decides: 'Glass cutter',
  warn: ({ span, width }) => (span < width ? 'The longer side spans: give the longer one first.' : undefined),
});
