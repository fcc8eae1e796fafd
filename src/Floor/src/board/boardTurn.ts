/** How long the board stays with a task before it shows the next. */
export const turnS = 24;

/**
 * Which task the board shows.
 * @param fixedAt A task the teacher has fixed, from 0; none to alternate. One that is no longer there counts as none.
 * @param sinceS Seconds since the board began to alternate.
 * @returns From 0; 0 for a sheet without tasks.
 */
export function taskShown(taskCount: number, fixedAt: number | undefined, sinceS: number): number {
  if (fixedAt !== undefined && fixedAt < taskCount) return fixedAt;
  return taskCount > 1 ? Math.floor(Math.max(0, sinceS) / turnS) % taskCount : 0;
}
