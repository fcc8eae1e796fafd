import "fake-indexeddb/auto";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { Entry } from "../src/contracts";
import { Keep } from "../src/keep/keep";
import { keepProblem, openDatabase, schemaVersion } from "../src/keep/schema";
import { Problem } from "../src/sync/problem";
import { about, bundle, lesson, newDisk, openTab, state } from "./keptWorld";

beforeEach(newDisk);
afterEach(() => vi.restoreAllMocks());

const held = { kind: "trial", isSuccess: true } as const;
const missed = { kind: "trial", isSuccess: false } as const;

describe("KeptFloor", () => {
  it("shows an entry only once its transaction is complete, and asks for the disk's own word", async () => {
    const { floor } = await openTab();
    const asked: IDBTransactionOptions[] = [];
    const transaction = IDBDatabase.prototype.transaction;
    let isComplete = false;
    vi.spyOn(IDBDatabase.prototype, "transaction").mockImplementation(function (this: IDBDatabase, ...args: Parameters<IDBDatabase["transaction"]>) {
      if (args[2]) asked.push(args[2]);
      const tx = transaction.apply(this, args);
      tx.addEventListener("complete", () => (isComplete = true));
      return tx;
    });
    const put = floor.put(about(0), held);
    const unsubscribe = floor.log.subscribe((log) => expect(log.length === 0 || isComplete).toBe(true));
    expect(floor.log.value).toEqual([]);
    await put;
    expect(isComplete).toBe(true);
    expect(asked).toEqual([{ durability: "strict" }]);
    expect(floor.log.value).toMatchObject([{ deviceSequence: 1, deviceId: "d1", fact: held, source: "floor" }]);
    unsubscribe();
  });

  it("rejects and shows nothing where the disk is full", async () => {
    const { floor, keep } = await openTab();
    vi.spyOn(IDBObjectStore.prototype, "add").mockImplementation(() => {
      throw new DOMException("full", "QuotaExceededError");
    });
    await expect(floor.put(about(0), held)).rejects.toMatchObject({ code: "keepFull" });
    vi.restoreAllMocks();
    expect(floor.log.value).toEqual([]);
    expect(await keep.entries(lesson.key)).toEqual([]);
    await floor.put(about(0), held);
    expect(floor.log.value).toHaveLength(1);
  });

  it("rejects where the transaction is aborted after every request of it succeeded", async () => {
    const { floor, keep } = await openTab();
    const transaction = IDBDatabase.prototype.transaction;
    vi.spyOn(IDBDatabase.prototype, "transaction").mockImplementation(function (this: IDBDatabase, ...args: Parameters<IDBDatabase["transaction"]>) {
      const tx = transaction.apply(this, args);
      const put = tx.objectStore("counters").put.bind(tx.objectStore("counters"));
      vi.spyOn(IDBObjectStore.prototype, "put").mockImplementationOnce((value) => {
        const request = put(value);
        request.addEventListener("success", () => tx.abort());
        return request;
      });
      return tx;
    });
    await expect(floor.put(about(0), held)).rejects.toBeInstanceOf(Problem);
    vi.restoreAllMocks();
    expect(floor.log.value).toEqual([]);
    expect(await keep.waitingCount(lesson.key)).toBe(0);
  });

  it("opens again with everything, and goes on counting", async () => {
    const first = await openTab();
    await first.floor.put(about(0), held);
    await first.floor.put(about(0), missed);
    first.keep.close();
    const again = await openTab();
    expect(again.floor.delivery.value.unsentCount).toBe(2);
    expect(again.floor.log.value).toMatchObject([{ deviceSequence: 1 }, { deviceSequence: 2, supersedesId: first.floor.log.value[0]!.id }]);
    await again.floor.put(about(0), held);
    expect(again.floor.log.value.map((e) => e.deviceSequence)).toEqual([1, 2, 3]);
  });

  it("corrects what another tab wrote a moment before", async () => {
    const [a, b] = [await openTab(), await openTab()];
    await a.floor.put(about(0), held);
    await b.floor.put(about(0), missed);
    const log = b.floor.log.value;
    expect(log).toHaveLength(2);
    expect(log[1]).toMatchObject({ deviceSequence: 2, supersedesId: log[0]!.id });
  });

  it("takes several facts whole or not at all", async () => {
    const { floor, keep } = await openTab();
    const add = IDBObjectStore.prototype.add;
    let count = 0;
    vi.spyOn(IDBObjectStore.prototype, "add").mockImplementation(function (this: IDBObjectStore, value) {
      if (++count === 2) throw new DOMException("full", "QuotaExceededError");
      return add.call(this, value);
    });
    await expect(floor.putAll([[about(0), held], [about(1), held]])).rejects.toMatchObject({ code: "keepFull" });
    vi.restoreAllMocks();
    expect(floor.log.value).toEqual([]);
    expect(await keep.entries(lesson.key)).toEqual([]);
  });

  it("puts what others wrote beside its own, once each", async () => {
    const { floor } = await openTab();
    await floor.put(about(0), held);
    const own = floor.log.value[0]!;
    const others: Entry = { ...own, id: "other", deviceId: "d2", receivedAt: "2026-03-02T08:00:00Z" };
    const stranger: Entry = { ...others, id: "stranger", pupilId: "nobody here" };
    await floor.takeBundle({ ...bundle, entries: [others, { ...own, receivedAt: "2026-03-02T09:00:00Z" }, stranger] }, "t1");
    expect(floor.log.value.map((e) => [e.id, e.receivedAt])).toEqual([["other", "2026-03-02T08:00:00Z"], [own.id, "2026-03-02T09:00:00Z"]]);
    await floor.takeNews({ entries: [{ ...others, id: "news", receivedAt: "2026-03-02T07:00:00Z" }] });
    expect(floor.log.value[0]!.id).toBe("news");
    expect((await openTab()).floor.log.value.map((e) => e.id)).toEqual(["news", "other", own.id]);
  });

  it("brings in a device's entries under that device's own name, and none of another lesson", async () => {
    const { floor, keep } = await openTab();
    await floor.put(about(0), held);
    const foreign: Entry = { ...floor.log.value[0]!, id: "foreign", deviceId: "far", deviceSequence: 7 };
    expect(await floor.takeIn([foreign])).toBe(1);
    expect(await floor.takeIn([foreign])).toBe(0);
    expect((await keep.waiting(lesson.key)).map((e) => [e.deviceId, e.deviceSequence])).toEqual([["d1", 1], ["far", 7]]);
    await expect(floor.takeIn([{ ...foreign, id: "x", lessonId: "another" }])).rejects.toMatchObject({ code: "notOurs" });
    await floor.put(about(1), held);
    expect(floor.log.value.filter((e) => e.deviceId === "d1").map((e) => e.deviceSequence)).toEqual([1, 2]);
  });
});

describe("Keep", () => {
  it("removes nothing of a lesson while anything waits, and all of it afterwards", async () => {
    const { floor, keep } = await openTab();
    await floor.put(about(0), held);
    await floor.takeNews({ entries: [{ ...floor.log.value[0]!, id: "given" }] });
    expect(await keep.removeLesson(lesson.key)).toBe(false);
    expect(await keep.entries(lesson.key)).toHaveLength(1);
    await keep.settle([floor.log.value.find((e) => e.deviceId === "d1")!.id, "given"], [], state.serverNow);
    expect(await keep.removeLesson(lesson.key)).toBe(true);
    expect([await keep.lessons(), await keep.entries(lesson.key), await keep.given(lesson.key), await keep.bundle(lesson.key)]).toEqual([[], [], [], undefined]);
    // The numbers go on, so that a device that joins again never gives one twice; and what is tapped now is not said to be kept.
    await expect(floor.put(about(1), held)).rejects.toMatchObject({ code: "lessonClosed" });
    const again = await openTab();
    await again.floor.put(about(1), held);
    expect(again.floor.log.value[0]!.deviceSequence).toBe(2);
  });

  it("keeps one lesson open a face, and the others as long as they have something to deliver", async () => {
    const { keep } = await openTab();
    await keep.saveLesson({ ...lesson, key: "next/d1", lessonId: "next" });
    expect((await keep.openLesson("pupil"))?.key).toBe("next/d1");
    await keep.saveLesson({ ...lesson, key: "board/d2", face: "board" });
    expect((await keep.openLesson("pupil"))?.key).toBe("next/d1");
    expect((await keep.lessons()).filter((l) => !l.isOpen).map((l) => l.key)).toEqual([lesson.key]);
  });

  it("forgets what was delivered about pupils it serves no more, and keeps what waits", async () => {
    const { floor, keep } = await openTab();
    await floor.put(about(0), held);
    await floor.put(about(1), held);
    await keep.settle([floor.log.value[0]!.id], [], state.serverNow);
    await keep.forgetOthers(lesson.key, ["somebody else"]);
    expect((await keep.entries(lesson.key)).map((k) => k.standing)).toEqual(["waits"]);
  });

  it("is the same device at the next start, another one for another face", async () => {
    const keep = await Keep.open();
    const id = await keep.deviceId("pupil");
    expect(id.length).toBeLessThanOrEqual(40);
    expect(await keep.deviceId("board")).not.toBe(id);
    keep.close();
    const again = await Keep.open();
    expect(await again.deviceId("pupil")).toBe(id);
    expect(await again.deviceId("pupil", true)).not.toBe(id);
  });
});

describe("openDatabase", () => {
  it("says so where the browser keeps nothing", async () => {
    const real = globalThis.indexedDB;
    vi.stubGlobal("indexedDB", undefined);
    await expect(openDatabase()).rejects.toMatchObject({ code: "keepMissing" });
    vi.stubGlobal("indexedDB", { open: () => { throw new DOMException("denied", "SecurityError"); } });
    await expect(openDatabase()).rejects.toMatchObject({ code: "keepMissing" });
    vi.stubGlobal("indexedDB", real);
  });

  it("does not touch a database that a newer page made", async () => {
    const newer = indexedDB.open("slantwise-floor", schemaVersion + 1);
    await new Promise((done) => (newer.onsuccess = done));
    newer.result.close();
    await expect(openDatabase()).rejects.toBeInstanceOf(Problem);
  });

  it("tells full from failed", () => {
    expect(keepProblem(new DOMException("", "QuotaExceededError")).code).toBe("keepFull");
    expect(keepProblem(new Error("what")).code).toBe("keepFailed");
  });
});
