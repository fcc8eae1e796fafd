import type { PupilToPick } from "../contracts";

/** The names of which any word begins with what was typed; without accents and capitals, as a child types. */
export function namesThatBegin(pupils: readonly PupilToPick[], typed: string): readonly PupilToPick[] {
  const begins = plain(typed).trim();
  if (!begins) return pupils;
  return pupils.filter(({ label }) => {
    const name = plain(label);
    return name.startsWith(begins) || name.split(/[\s'’.-]+/).some((word) => word.startsWith(begins));
  });
}

function plain(text: string): string {
  return text
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase();
}
