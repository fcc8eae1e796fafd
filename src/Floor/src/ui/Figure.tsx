import { useMemo } from "preact/hooks";
import type { BundleFigure } from "../contracts";
import "./parts.css";
import { pageTones } from "./tones";

/** A drawing of the bundle, as a picture: nothing in it can run, and its words are the alternative text. */
export function Figure({ figure, description }: { readonly figure: BundleFigure; readonly description?: string }) {
  const tones = pageTones.value;
  const source = useMemo(() => drawingUrl(figure.svg, tones), [figure.svg, tones]);
  return <img class="drawing" src={source} alt={description ?? figure.description} width={60} height={60} draggable={false} />;
}

/** The drawing with the page's colours in it, as an address that needs no network. A tone the page has no colour for keeps the drawing's own. */
export function drawingUrl(svg: string, tones: Readonly<Record<string, string>>): string {
  return `data:image/svg+xml,${encodeURIComponent(svg.replace(/var\((--tone-[\w-]+),[^)]*\)/g, (own, tone: string) => tones[tone] ?? own))}`;
}
