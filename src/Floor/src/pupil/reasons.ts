import type { NextLevel } from "../contracts";
import type { SetSheet } from "../lesson/pupilSheet";
import type { WordKey } from "../words/say";

/** Three or four reasons to pick from: about the cues, what was said before, how it felt. None is about being good. */
export function reasonKeys(next: NextLevel, set: SetSheet): readonly WordKey[] {
  const isSaid = set.prediction !== undefined;
  switch (next) {
    case "same":
      return ["PupilWhyTries", "PupilWhyCuesMore", isSaid ? "PupilWhySaid" : undefined, "PupilWhyRight"].filter(isThere);
    case "harder":
      return ["PupilWhyCues", "PupilWhyFirm", isSaid ? "PupilWhyMore" : undefined, "PupilWhyTry"].filter(isThere);
    case "easier":
      return ["PupilWhyCuesFirst", "PupilWhyShaky", isSaid ? "PupilWhyLess" : undefined, "PupilWhyCalm"].filter(isThere);
  }
}

function isThere(key: string | undefined): key is WordKey {
  return key !== undefined;
}
