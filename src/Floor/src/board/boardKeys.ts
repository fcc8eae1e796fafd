/**
 * What a key does to the board: a number fixes that task, the arrows go on and back from the one shown and fix that, space, 0 or Escape let them take turns again.
 * @param at The task shown, from 0.
 * @returns From 0; `turns` to alternate; none for a key that means nothing here.
 */
export function boardKey(key: string, taskCount: number, at: number): number | "turns" | undefined {
  if (key === " " || key === "0" || key === "Escape") return "turns";
  if (taskCount === 0) return undefined;
  if (key === "ArrowRight" || key === "PageDown") return (at + 1) % taskCount;
  if (key === "ArrowLeft" || key === "PageUp") return (at - 1 + taskCount) % taskCount;
  const place = /^[1-9]$/.test(key) ? Number(key) - 1 : -1;
  return place >= 0 && place < taskCount ? place : undefined;
}
