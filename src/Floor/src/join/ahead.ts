import type { FaceName } from "../faces";
import { loadWords } from "../words/say";
import { startsWithoutNetwork } from "./update";

/**
 * Fetches what a lesson may need later, one after the other, so that it is there when the network is not. Where a worker keeps all pages on the device,
 * only what is small; on plain http everything that this face can ask for.
 */
export async function fetchAhead(face: FaceName): Promise<void> {
  const small = [() => import("./SettingsPanel"), () => import("../chain/HandOver"), () => import("../chain/ShowChain"), ...(face === "teacher" ? [() => import("../chain/Inbox")] : [])];
  const rest = [() => import("lean-qr"), () => loadWords("shared", "en"), () => loadWords("shared", "es"), ...(face === "teacher" ? [() => import("jsqr")] : [])];
  for (const part of startsWithoutNetwork() ? small : [...small, ...rest]) {
    try {
      await part();
    } catch {
      // The network went first; whatever needs this part says so when it is asked for.
      return;
    }
  }
}
