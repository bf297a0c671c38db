/** A checkbox on paper, large enough to tick with wet hands. */
export function BoxToTick() {
  return (
    <span class="to-tick" aria-hidden="true">
      <span />
    </span>
  );
}
