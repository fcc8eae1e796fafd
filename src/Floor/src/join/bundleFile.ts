import type { FloorDeviceKind, LessonBundle } from "../contracts";
import type { FaceName } from "../faces";
import type { KeptLesson } from "../keep/schema";
import { Problem } from "../sync/problem";

/** The file by which the desk hands a lesson to a device that has no network. */
export interface BundleFile {
  readonly format: "slantwise-bundle/1";
  /** What the device shows the server, should there be a network later; none where it never joined. */
  readonly token?: string;
  readonly device: { readonly deviceId: string; readonly name: string; readonly kind: FloorDeviceKind };
  readonly bundle: LessonBundle;
}

/** The longest file that is looked at: figures and a class of forty stay far below. */
const mostCharacters = 20_000_000;

/** Reads such a file. It throws a `Problem` where it is something else, or for another face. */
export function readBundleFile(text: string, face: FaceName): { lesson: KeptLesson; bundle: LessonBundle } {
  const file = parsed(text);
  if (file?.format !== "slantwise-bundle/1") throw new Problem("notOurs");
  const { bundle, device, token } = file;
  if (bundle?.format !== undefined && bundle.format !== 1) throw new Problem("bundleNewer");
  if (!Array.isArray(bundle?.tasks) || !Array.isArray(bundle.entries) || typeof bundle.lessonId !== "string" || !isDeviceId(device?.deviceId)) throw new Problem("notOurs");
  const isForFace = face === "pupil" ? ["pupil", "pair", "station"].includes(bundle.kind) : bundle.kind === face;
  if (!isForFace) throw new Problem("notOurs");
  const lesson: KeptLesson = {
    key: `${bundle.lessonId}/${device.deviceId}`,
    face,
    deviceId: device.deviceId,
    schoolId: bundle.schoolId,
    lessonId: bundle.lessonId,
    kind: bundle.kind,
    title: bundle.lessonTitle,
    className: bundle.className,
    ...(token !== undefined && { token }),
    pupils: bundle.pupils.map((p) => ({ pupilId: p.pupilId, label: p.label, isServed: false })),
    state: {
      serverNow: new Date().toISOString(),
      deviceName: device.name,
      pupilIds: bundle.kind === "pupil" || bundle.kind === "pair" ? bundle.pupils.map((p) => p.pupilId) : [],
      isLocked: false,
      appVersion: "0",
    },
    clockOffsetMs: 0,
    isOpen: true,
  };
  return { lesson, bundle };
}

function parsed(text: string): BundleFile | undefined {
  if (text.length > mostCharacters) return undefined;
  try {
    return JSON.parse(text) as BundleFile;
  } catch {
    return undefined;
  }
}

function isDeviceId(value: unknown): boolean {
  return typeof value === "string" && value.length >= 1 && value.length <= 40;
}
