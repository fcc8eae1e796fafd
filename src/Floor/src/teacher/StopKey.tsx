import { say } from "../words/say";
import { HoldKey } from "./HoldKey";
import { Sign } from "./Sign";
import type { Teaching } from "./teaching";

/** Stop on every screen, or go on. It needs the network and says so where there is none: then the voice must do. */
export function StopKey({ teaching, isLarge }: { readonly teaching: Teaching; readonly isLarge?: boolean }) {
  const isStopped = teaching.floor.state.value.stoppedAt !== undefined;
  const order = () => void teaching.order({ isStopped: !isStopped }, isStopped ? "TeacherGoFailed" : "TeacherStopFailed");
  const looks = `${isStopped ? "go" : "stop"}${isLarge ? " large" : ""}`;
  return (
    <HoldKey looks={looks} label={say(isStopped ? "TeacherGo" : "TeacherStopAll")} onDone={order}>
      {isStopped && <Sign name="go" />}
      <span>{say(isStopped ? "TeacherGo" : "TeacherStop")}</span>
    </HoldKey>
  );
}
