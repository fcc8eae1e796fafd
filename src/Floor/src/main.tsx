import { render } from "preact";
import { faceOf, loadFace } from "./faces";
import { say } from "./words/say";

const root = document.getElementById("floor")!;

if (import.meta.env.MODE !== "production" && new URLSearchParams(location.search).has("look")) {
  void import("./look/look").then(({ look }) => look(root));
} else {
  render(<h1>{say("AppName")}</h1>, root);
  void loadFace(faceOf(location.pathname));
}
