import { render } from "preact";
import { say } from "./words/say";

render(<h1>{say("AppName")}</h1>, document.getElementById("floor")!);
