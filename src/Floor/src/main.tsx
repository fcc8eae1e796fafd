import { render } from "preact";
import { faceOf, loadFace } from "./faces";
import { App } from "./join/App";
import { Session } from "./join/session";
import "./ui/tokens.css";
import "./type.css";

const root = document.getElementById("floor")!;

if (import.meta.env.MODE !== "production" && new URLSearchParams(location.search).has("look")) {
  void import("./look/look").then(({ look }) => look(root));
} else {
  const face = faceOf(location.pathname);
  const session = new Session(face);
  render(<App session={session} />, root);
  void session.start();
  // While there is a network: on plain http nothing else would bring the face once it is gone.
  void loadFace(face).catch(() => undefined);
}
