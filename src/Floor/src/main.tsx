import { render } from "preact";
import { faceOf } from "./faces";
import { App } from "./join/App";
import { Session } from "./join/session";
import "./ui/pressed";
import "./ui/tokens.css";
import "./type.css";

const root = document.getElementById("floor")!;

if (import.meta.env.MODE !== "production" && new URLSearchParams(location.search).has("look")) {
  void import("./look/look").then(({ look }) => look(root));
} else {
  const session = new Session(faceOf(location.pathname));
  render(<App session={session} />, root);
  void session.start();
}
