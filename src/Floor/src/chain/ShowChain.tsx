import { useSignal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import type { Entry } from "../contracts";
import { problemText } from "../sync/problem";
import { Banner } from "../ui/Banner";
import { Button } from "../ui/Button";
import { settings } from "../join/settings";
import { say } from "../words/say";
import { linesOf } from "./entryLines";
import { packedText } from "./packing";
import { partsOf } from "./parts";
import { qrCodeOf } from "./qrCode";

/** Long enough for a phone to focus, and short enough that twenty codes are through in half a minute. */
const pauseMs = 1200;

/** The entries as codes, one after the other, round and round: the reader takes them in any order. */
export function ShowChain({ entries, onClose }: { readonly entries: readonly Entry[]; readonly onClose: () => void }) {
  const parts = useSignal<readonly string[]>([]);
  const at = useSignal(0);
  const code = useSignal<{ path: string; size: number } | undefined>(undefined);
  const isRunning = useSignal(settings.peek().motion !== "less");
  const problem = useSignal<unknown>(undefined);
  useEffect(() => {
    packedText(linesOf(entries))
      .then((bytes) => (parts.value = partsOf(bytes)))
      .catch((failure) => (problem.value = failure));
  }, [entries]);
  const text = parts.value[at.value];
  useEffect(() => {
    let isGone = false;
    if (text !== undefined) void qrCodeOf(text).then((drawn) => isGone || (code.value = drawn), (failure) => (problem.value = failure));
    return () => void (isGone = true);
  }, [text]);
  const total = parts.value.length;
  useEffect(() => {
    if (!isRunning.value || total < 2) return;
    const timer = setInterval(() => (at.value = (at.value + 1) % total), pauseMs);
    return () => clearInterval(timer);
  }, [isRunning.value, total]);
  return (
    <div class="chain" data-part={at.value + 1} data-total={total}>
      <p>{say("SyncChainHow")}</p>
      {problem.value !== undefined && <Banner kind="problem" isNews>{problemText(problem.value)}</Banner>}
      <svg class="chain-code" viewBox={`0 0 ${code.value?.size ?? 1} ${code.value?.size ?? 1}`} role="img" aria-label={say("SyncChainPart", at.value + 1, total)} shape-rendering="crispEdges">
        <rect width="100%" height="100%" fill="#fff" />
        {code.value && <path d={code.value.path} fill="#000" />}
      </svg>
      <p class="numbers">{say("SyncChainPart", at.value + 1, total)}</p>
      <div class="row">
        {total > 1 && (
          <>
            <Button onPress={() => void (isRunning.value = !isRunning.value)}>{say(isRunning.value ? "SyncChainStop" : "SyncChainRun")}</Button>
            <Button
              mark="next"
              onPress={() => {
                isRunning.value = false;
                at.value = (at.value + 1) % total;
              }}
            >
              {say("SyncChainNext")}
            </Button>
          </>
        )}
        <Button kind="quiet" onPress={onClose}>{say("SettingsClose")}</Button>
      </div>
    </div>
  );
}
