import { useMemo } from "preact/hooks";
import type { BundleFigure } from "../contracts";
import "./parts.css";
import { toneRules } from "./tones";

/** A drawing of the bundle, as a picture: nothing in it can run, and its words are the alternative text. */
export function Figure({ figure, description }: { readonly figure: BundleFigure; readonly description?: string }) {
  const rules = toneRules.value;
  const source = useMemo(() => drawingUrl(figure.svg, rules), [figure.svg, rules]);
  return <img class="drawing" src={source} alt={description ?? figure.description} width={60} height={60} draggable={false} />;
}

/** The drawing with the page's colours in it, as an address that needs no network. */
export function drawingUrl(svg: string, rules: string): string {
  const coloured = rules ? svg.replace(/<svg\b[^>]*>/, (tag) => `${tag}<style>svg{${rules}}</style>`) : svg;
  return `data:image/svg+xml,${encodeURIComponent(coloured)}`;
}
