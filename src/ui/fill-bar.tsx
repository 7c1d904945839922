/**
 * How full something is. `share` is 0 for empty and 1 for the limit; beyond it the bar stays full and
 * changes its pattern. For the eyes: its numbers stand beside it.
 */
export function FillBar({ share }: { share: number }) {
  const isOver = share > 1;
  return (
    <svg class="fill-bar" viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
      <rect class="fill-bar-room" width="100" height="8" />
      <rect
        class={isOver ? "fill-bar-over" : "fill-bar-full"}
        width={100 * Math.min(1, Math.max(0, share))}
        height="8"
      />
    </svg>
  );
}
