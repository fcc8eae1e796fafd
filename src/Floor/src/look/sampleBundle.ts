import type { BundleFigure, BundlePupil, BundleTask, FloorDeviceKind, LessonBundle } from "../contracts";

const id = (group: number, n: number) => `00000000-0000-7000-8000-${String(group).padStart(4, "0")}${String(n).padStart(8, "0")}`;

const figures: BundleFigure[] = [
  figure("wide", "Standing on one foot, arms out wide.", "M50 20v40M50 32 20 26M50 32l30-6M50 60l-8 34M50 60l14 12-8 8"),
  figure("crossed", "Standing on one foot, arms crossed.", "M50 20v40M50 34l12 8-20 4M50 34l-12 8 20 4M50 60l-8 34M50 60l14 12-8 8"),
  figure("raised", "Standing on one foot, the other leg raised behind, arms forward.", "M40 26l14 30M44 34 18 40M44 36l-24 8M54 56l-4 38M54 56l36 2"),
];

const tasks: BundleTask[] = [
  {
    taskId: id(1, 1),
    name: "One-foot balance",
    purpose: "Stand still on one foot.",
    cues: ["Look at one point", "Standing knee soft", "Hips level"],
    caution: "Keep two arm lengths apart.",
    levels: [
      { levelId: id(2, 1), name: "Arms out wide", doseKind: "holdS", doseAmount: 10, figureKey: "wide" },
      { levelId: id(2, 2), name: "Arms crossed", doseKind: "holdS", doseAmount: 10, figureKey: "crossed" },
      { levelId: id(2, 3), name: "Leg raised behind", doseKind: "holdS", doseAmount: 8, figureKey: "raised" },
    ],
  },
  {
    taskId: id(1, 2),
    name: "Rope jump",
    purpose: "Jump in an even rhythm.",
    cues: ["Small jumps", "Wrists turn the rope"],
    caution: "",
    levels: [
      { levelId: id(2, 4), name: "Two jumps a turn", doseKind: "repetitionsCount", doseAmount: 10 },
      { levelId: id(2, 5), name: "One jump a turn", doseKind: "repetitionsCount", doseAmount: 10 },
    ],
  },
];

const names = [
  "Ada", "Bruno", "Carla", "Dario", "Elif", "Farid", "Greta", "Hugo", "Inés", "Jonas", "Kofi", "Lucía", "Marta", "Noor", "Ole",
  "Pablo", "Quirin", "Rosa", "Sami", "Tomás", "Uma", "Vera", "Wanda", "Xavi", "Yara", "Zoe", "Álvaro", "Begoña", "Chen", "Maximiliano José",
];

/** A made-up lesson, to look at screens with. One pupil has fewer levels; nothing says why. */
export function sampleBundle(face: "pupil" | "pair" | "station" | "teacher" | "board"): LessonBundle {
  const kind: FloorDeviceKind = face;
  const count = kind === "pupil" ? 1 : kind === "pair" ? 2 : kind === "board" ? 0 : names.length;
  return {
    format: 1,
    schoolId: id(9, 1),
    lessonId: id(9, 2),
    date: "2026-03-02",
    lessonTitle: "Balance and rope",
    className: "5b",
    kind,
    sheetVersion: 1,
    sheetTitle: "How still can I stand?",
    setCount: 2,
    trialCount: 5,
    predicts: "successCount",
    tasks,
    figures,
    translations: [],
    pupils: names.slice(0, count).map(pupil),
    phases: kind === "teacher" ? [{ phase: "instruction", durationMin: 5, note: "" }, { phase: "activity", durationMin: 25, note: "" }] : [],
    entries: [],
  };
}

/** The names of the made-up class, as a list to pick from. */
export function samplePick(): { pupilId: string; label: string; isServed: boolean }[] {
  return names.map((label, i) => ({ pupilId: id(3, i + 1), label, isServed: i % 7 === 3 }));
}

function pupil(label: string, place: number): BundlePupil {
  return {
    pupilId: id(3, place + 1),
    label,
    offers: tasks.map((task) => ({ taskId: task.taskId, levelIds: task.levels.map((l) => l.levelId).filter((_, i) => place !== 1 || i !== 2) })),
  };
}

function figure(key: string, description: string, path: string): BundleFigure {
  const svg =
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100" fill="none" stroke="currentColor" stroke-width="5" stroke-linecap="round" stroke-linejoin="round">` +
    `<circle cx="${key === "raised" ? 36 : 50}" cy="${key === "raised" ? 16 : 12}" r="7"/><path d="${path}"/></svg>`;
  return { key, svg, description };
}
