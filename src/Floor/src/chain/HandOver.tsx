import { useSignal } from "@preact/signals";
import type { Entry } from "../contracts";
import { problemText } from "../sync/problem";
import { Banner } from "../ui/Banner";
import { Button } from "../ui/Button";
import { say } from "../words/say";
import { linesOf } from "./entryLines";
import { later } from "../join/later";


const ShowChain = later(async () => (await import("./ShowChain")).ShowChain);

export interface HandOverProps {
  /** What waits on this device. */
  readonly entries: () => Promise<readonly Entry[]>;
  /** For the file's name. */
  readonly name: string;
}

/** Two ways to carry entries away without a network. Neither marks anything as delivered: only the server's word does. */
export function HandOver({ entries, name }: HandOverProps) {
  const shown = useSignal<readonly Entry[] | undefined>(undefined);
  const said = useSignal("");
  const problem = useSignal<unknown>(undefined);
  const waiting = async (use: (entries: readonly Entry[]) => void) => {
    problem.value = undefined;
    try {
      use(await entries());
    } catch (failure) {
      problem.value = failure;
    }
  };
  if (shown.value) return <ShowChain entries={shown.value} onClose={() => (shown.value = undefined)} />;
  return (
    <div class="stack-s">
      <div class="row">
        <Button onPress={() => waiting((e) => (said.value = say("SyncFileSaved", save(e, name))))}>{say("SyncFileSave")}</Button>
        <Button onPress={() => waiting((e) => void (shown.value = e))}>{say("SyncChainShow")}</Button>
      </div>
      <p role="status" class="small muted">{said.value}</p>
      {problem.value !== undefined && <Banner kind="problem" isNews>{problemText(problem.value)}</Banner>}
    </div>
  );
}

function save(entries: readonly Entry[], name: string): string {
  const plain = name.normalize("NFD").replace(/[^A-Za-z0-9]+/g, "") || "lesson";
  const day = (entries[0]?.madeAt ?? new Date().toISOString()).slice(0, 10);
  const file = `slantwise-entries-${plain}-${day}-${entries[0]?.deviceId.slice(-4) ?? ""}.jsonl`;
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([linesOf(entries)], { type: "application/x-ndjson" }));
  link.download = file;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
  return file;
}
