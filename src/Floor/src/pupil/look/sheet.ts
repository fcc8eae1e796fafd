import type { BundleLevel, BundleTask, BundleTranslation, LessonBundle } from "../../contracts";

const figures = import.meta.glob<string>("./figures/*.svg", { query: "?raw", import: "default", eager: true });

const levels = (task: string, doses: readonly number[], keys: readonly (string | undefined)[], names: readonly string[], kind: BundleLevel["doseKind"] = "holdS"): BundleLevel[] =>
  names.map((name, i) => ({ levelId: `${task}${i + 1}`, name, doseKind: kind, doseAmount: doses[i]!, ...(keys[i] && { figureKey: keys[i]! }) }));

const foot = ["one-foot-toes-down", "one-foot-arms-out", "stork-hands-on-hips", "stork-hands-on-hips", "one-foot-arms-out"];
const sit = ["tuck-sit-heels", "tuck-sit", undefined, "v-sit-hands", "v-sit"];

const tasks: BundleTask[] = [
  {
    taskId: "foot", name: "One-foot balance", purpose: "Stand on one foot and grow still, like a post set in the ground.", caution: "",
    cues: ["My eyes rest on one spot.", "My standing leg feels long and firm.", "My hips are level, like a shelf.", "My whole foot presses into the floor."],
    levels: levels("foot", [5, 5, 5, 10, 5], foot, ["Toes of the free foot rest on the floor", "Free foot lifted, arms out wide", "Free foot at the knee, hands on hips", "Free foot at the knee, hands on hips", "Eyes closed, arms out wide"]),
  },
  {
    taskId: "sit", name: "V-sit", purpose: "Balance on your seat and open your body into the letter V.", caution: "Sit on a mat, and rest when your lower back gets tired.",
    cues: ["I sit tall with my chest lifted.", "My middle feels tight and strong.", "My legs stay pressed together.", "I see my toes in front of me."],
    levels: levels("sit", [5, 5, 5, 5, 5], sit, ["Knees bent, heels on the floor, arms forward", "Knees bent, feet up, hands behind the knees", "Knees bent, feet up, arms forward", "Legs straight, hands on the floor behind", "Legs straight, arms forward"]),
  },
  {
    taskId: "rope", name: "Rope jumping", purpose: "Keep the rope and your feet in one steady beat.", caution: "Keep a rope's length clear all around you, and tie your laces.",
    cues: ["I land softly with springy knees.", "I hear one steady beat."],
    levels: levels("rope", [10, 10, 5, 10, 20], [], ["Rope lies still: step over it and back", "Rope turns at your side: jump as it lands", "Rope over, let it stop at your toes, jump", "Both feet, the rope keeps turning", "Running step, the rope keeps turning"], "repetitionsCount"),
  },
];

const spanish: BundleTranslation = {
  language: "es",
  figureDescriptions: {},
  tasks: [
    {
      ...tasks[0]!, name: "Equilibrio sobre un pie", purpose: "Ponte sobre un pie sin moverte, como un poste clavado en la tierra.",
      cues: ["Mis ojos descansan en un punto.", "Siento la pierna de apoyo larga y firme.", "Mis caderas están niveladas, como un estante.", "Todo mi pie empuja el suelo."],
      levels: levels("foot", [5, 5, 5, 10, 5], foot, ["Los dedos del pie libre tocan el suelo", "Pie libre en el aire, brazos abiertos", "Pie libre en la rodilla, manos en la cintura", "Pie libre en la rodilla, manos en la cintura", "Ojos cerrados, brazos abiertos"]),
    },
  ],
};

const names = ["Aaliyah", "Abena", "Ada", "Ahmed P", "Bo", "Carlos", "Dilan", "Elif", "Finn", "Grace", "Hana", "Ines", "Jakub", "Kofi", "Leo", "Mia", "Noor", "Oskar", "Priya", "Ruben"];

/** A lesson to look at: two or three tasks of five levels, as the library has them. */
export function lookSheet(part: Partial<LessonBundle>, taskCount: number): LessonBundle {
  const own = tasks.slice(0, taskCount);
  const kind = part.kind ?? "pupil";
  const served = kind === "station" ? names : kind === "pair" ? ["Mia", "Leo"] : ["Mia"];
  return {
    format: 1, schoolId: "school", lessonId: "lesson", date: "2026-03-02", lessonTitle: "Balances", className: "7 Heron", kind, sheetVersion: 1,
    sheetTitle: "Still as a post", setCount: 3, trialCount: 5, predicts: "successCount", tasks: own,
    figures: Object.entries(figures).map(([path, text]) => ({ key: path.slice("./figures/".length, -4), svg: text, description: /<title>(.*?)<\/title>/.exec(text)?.[1] ?? "" })),
    translations: [spanish],
    pupils: served.map((label) => ({ pupilId: label, label, offers: own.map((t) => ({ taskId: t.taskId, levelIds: t.levels.map((l) => l.levelId), ...(label === "Mia" && { adaptation: "One hand on the wall; sit down whenever you like." }) })) })),
    phases: [], entries: [], ...part,
  };
}
