import { describe, expect, it } from "vitest";
import { readBundleFile } from "../src/join/bundleFile";
import { cleanCode, isWholeCode, linkOf, restOf } from "../src/join/link";
import { namesThatBegin } from "../src/join/names";
import { faceOf } from "../src/faces";
import { sampleBundle, samplePick } from "../src/look/sampleBundle";

describe("A join link", () => {
  it("is a code or a ticket", () => {
    expect(linkOf("#join=bcd-234")).toEqual({ code: "BCD234" });
    expect(linkOf("#ticket=CfDJ8_-x&code=BCD234")).toEqual({ ticket: "CfDJ8_-x" });
    expect(linkOf("")).toBeUndefined();
    expect(restOf("#ticket=x&code=BCD234&until=2026")).toBe("#code=BCD234&until=2026");
    expect(restOf("#join=BCD234")).toBe("");
  });

  it("takes a code as cold fingers type it", () => {
    expect(cleanCode(" bcd 234 ")).toBe("BCD234");
    expect(cleanCode("bcd2345")).toBe("BCD234");
    expect([isWholeCode("BCD234"), isWholeCode("BCD23")]).toEqual([true, false]);
  });
});

describe("faceOf", () => {
  it("goes by the address", () => {
    expect(["/floor/", "/floor/teacher", "/floor/board", "/floor"].map(faceOf)).toEqual(["pupil", "teacher", "board", "pupil"]);
  });
});

describe("namesThatBegin", () => {
  const labels = (typed: string) => namesThatBegin(samplePick(), typed).map((p) => p.label);

  it("finds any word of a name, without accents and capitals", () => {
    expect(labels("al")).toEqual(["Álvaro"]);
    expect(labels("INE")).toEqual(["Inés"]);
    expect(labels("jo")).toEqual(["Jonas", "Maximiliano José"]);
    expect(labels("zz")).toEqual([]);
    expect(labels(" ")).toHaveLength(30);
  });
});

describe("A lesson's file", () => {
  const file = (part: object = {}) => JSON.stringify({ format: "slantwise-bundle/1", device: { deviceId: "far", name: "Tablet 9", kind: "pair" }, bundle: sampleBundle("pair"), ...part });

  it("opens as the device the desk made it for", () => {
    const { lesson, bundle } = readBundleFile(file({ token: "t" }), "pupil");
    expect(lesson).toMatchObject({ deviceId: "far", kind: "pair", token: "t", isOpen: true, state: { deviceName: "Tablet 9", pupilIds: bundle.pupils.map((p) => p.pupilId) } });
    expect("token" in readBundleFile(file(), "pupil").lesson).toBe(false);
  });

  it("is refused where it is another file, another face's, or of a newer making", () => {
    for (const text of ["", "[]", "null", "{}", file({ format: "x" }), file({ device: { deviceId: "" } }), file({ bundle: {} })])
      expect(() => readBundleFile(text, "pupil"), text.slice(0, 40)).toThrow(expect.objectContaining({ code: "notOurs" }) as Error);
    expect(() => readBundleFile(file(), "teacher")).toThrow(expect.objectContaining({ code: "notOurs" }) as Error);
    expect(() => readBundleFile(file({ bundle: { ...sampleBundle("pair"), format: 2 } }), "pupil")).toThrow(expect.objectContaining({ code: "bundleNewer" }) as Error);
  });
});
