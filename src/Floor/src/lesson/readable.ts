import type { BundleTask, LessonBundle } from "../contracts";

/** The bundle in a language, as far as its translations go; ids, doses and orders stay the sheet's own. */
export function readable(bundle: LessonBundle, language: string): LessonBundle {
  const translation = bundle.translations.find((t) => t.language === language);
  if (!translation) return bundle;
  return {
    ...bundle,
    tasks: bundle.tasks.map((task) => inOtherWords(task, translation.tasks.find((t) => t.taskId === task.taskId))),
    figures: bundle.figures.map((f) => ({ ...f, description: translation.figureDescriptions[f.key] ?? f.description })),
  };
}

/** The language a task's words are in, for reading aloud: a sheet does not say its own, so it is the one it is not translated into. */
export function languageOf(bundle: LessonBundle, taskId: string, language: string, known: readonly string[]): string {
  const isTranslated = bundle.translations.some((t) => t.language === language && t.tasks.some((task) => task.taskId === taskId));
  if (isTranslated || bundle.translations.length === 0) return language;
  return known.find((l) => bundle.translations.every((t) => t.language !== l)) ?? language;
}

function inOtherWords(task: BundleTask, other: BundleTask | undefined): BundleTask {
  if (!other || other.cues.length !== task.cues.length) return task;
  const names = new Map(other.levels.map((l) => [l.levelId, l.name]));
  return {
    ...task,
    name: other.name,
    purpose: other.purpose,
    cues: other.cues,
    caution: other.caution,
    levels: task.levels.map((l) => ({ ...l, name: names.get(l.levelId) ?? l.name })),
  };
}
