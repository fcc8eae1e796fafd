import { signal } from "@preact/signals";
import type { Entry } from "../contracts";
import { Problem } from "../sync/problem";
import { entriesOfLines } from "./entryLines";
import { textOfPacked } from "./packing";
import { ChainReader } from "./parts";
import type { Scanner } from "./scanner";

/** How far the reading has come, and what the last whole chain or file brought. */
export interface InboxProgress {
  readonly readCount: number;
  readonly totalCount: number;
  readonly last?: { readonly entryCount: number; readonly newCount: number };
}

/** Takes codes, pictures of codes, and files, and hands on the entries of each once it is whole. */
export class ChainInbox {
  readonly progress = signal<InboxProgress>({ readCount: 0, totalCount: 0 });
  private readonly reader = new ChainReader();
  private taken: string | undefined;

  /** @param keep - Keeps entries; it says how many of them were new. */
  constructor(private readonly keep: (entries: readonly Entry[]) => Promise<number>) {}

  /** A code. One that is not ours is passed over: a camera sees much. */
  async take(text: string): Promise<void> {
    const soFar = this.reader.take(text);
    if (!soFar) return;
    const { bytes, ...counts } = soFar;
    if (!bytes) {
      this.progress.value = counts;
      return;
    }
    // The codes go round: a chain that is whole comes by again and again.
    const chain = text.split(":", 2).join(":");
    if (chain === this.taken) return;
    this.taken = chain;
    try {
      await this.bring(await textOfPacked(bytes), counts);
    } catch (failure) {
      this.taken = undefined;
      throw failure;
    }
  }

  /** A picture with a code in it. Throws a `Problem` where none of ours is found. */
  async takePicture(picture: Blob, scannerOf: () => Promise<Scanner>): Promise<void> {
    const image = await createImageBitmap(picture).catch(() => {
      throw new Problem("noCode");
    });
    const texts = (await (await scannerOf())(image, image.width, image.height)).filter((t) => t.startsWith("SLW1:"));
    image.close();
    if (texts.length === 0) throw new Problem("noCode");
    for (const text of texts) await this.take(text);
  }

  /** A file of entries. */
  async takeText(text: string): Promise<void> {
    await this.bring(text, { readCount: 0, totalCount: 0 });
  }

  private async bring(text: string, counts: { readCount: number; totalCount: number }): Promise<void> {
    const entries = entriesOfLines(text);
    const newCount = await this.keep(entries);
    this.progress.value = { ...counts, last: { entryCount: entries.length, newCount } };
  }
}
