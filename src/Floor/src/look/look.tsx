import { render, type ComponentType } from "preact";
import { faceOf, loadFace } from "../faces";
import { MemoryFloor } from "../lesson/memoryFloor";
import { language, loadWords } from "../words/say";
import { sampleBundle } from "./sampleBundle";
import "../join/join.css";

/** What a folder's `look.tsx` exports as `looks`: screens by name, to be looked at without a server. */
export type Looks = Readonly<Record<string, ComponentType>>;

const folders = import.meta.glob<{ looks: Looks }>("../*/look.tsx");

/**
 * Shows `?look=FOLDER/NAME` (the screen NAME of src/FOLDER/look.tsx), or `?look=pupil`, `?look=teacher`, `?look=board` (the whole face over a lesson in memory).
 * `&lang=es`, `&text=larger`, `&contrast=high`, `&motion=less`, `&hand=left` set the device. Not part of what is published.
 */
export async function look(root: HTMLElement): Promise<void> {
  const asked = new URLSearchParams(location.search);
  const name = asked.get("look")!;
  if (asked.get("lang") === "es") language.value = "es";
  for (const setting of ["text", "contrast", "motion", "hand"] as const) {
    const value = asked.get(setting);
    if (value) document.documentElement.dataset[setting] = value;
  }
  await loadWords("class");
  const [folder, screen] = name.split("/");
  if (!screen && (folder === "pupil" || folder === "teacher" || folder === "board")) {
    const Face = await loadFace(folder);
    render(<Face floor={new MemoryFloor(sampleBundle(folder))} />, root);
    return;
  }
  const looks = (await folders[`../${folder}/look.tsx`]?.())?.looks ?? {};
  const Screen = looks[screen ?? ""];
  render(
    Screen ? (
      <Screen />
    ) : (
      <ul>
        {Object.keys(looks).map((n) => (
          <li key={n}>
            <a href={`?look=${folder}/${n}`}>{n}</a>
          </li>
        ))}
        <li>{`${Object.keys(folders).join(", ")} · ${faceOf(location.pathname)}`}</li>
      </ul>
    ),
    root,
  );
}
