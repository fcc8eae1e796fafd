using Slantwise.Records.Checks;
using Slantwise.Records.Entries;

namespace Slantwise.Records.Floor.Rooms;

/// <summary>What a device may write, before anybody looks at whether it makes sense.</summary>
internal static class EntryRules
{
    /// <summary>Whether pupils write such facts about themselves; the others are the teacher's.</summary>
    public static bool IsPupils(EntryFact fact) => fact is Presence or Choice or Prediction or Trial or CueTick or Decision or Withdrawal;

    /// <summary>Why a device may not write an entry; none where it may.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="device">The device that delivers it.</param>
    /// <param name="known">What the entry it corrects is; none where that has not arrived yet, or it corrects nothing.</param>
    /// <param name="where">What leads the sentence: nothing that would name a pupil who is not the device's.</param>
    public static Finding? Against(Entry entry, FloorDevice device, KnownEntry? known, object where)
    {
        if (entry.Source != EntrySource.Floor) return Finding.Refused("EntryNotFromFloor", where);
        // The teacher's phone also brings what tablets without a network handed to it.
        if (device.Kind == FloorDeviceKind.Teacher) return null;
        if (entry.DeviceId != device.DeviceId) return Finding.Refused("EntryOfOtherDevice", where);
        if (device.Kind == FloorDeviceKind.Board || !IsPupils(entry.Fact)) return Finding.Refused("EntryKindNotForDevice", where);
        // A station serves the class: that the pupil is in it is looked at with all else.
        if (entry.PupilId is not { } pupil || (device.Kind != FloorDeviceKind.Station && !device.ServedPupilIds.Contains(pupil)))
            return Finding.Refused("EntryPupilNotServed", where);
        // Ids cannot be guessed: one that is not here yet is the device's own, on its way.
        return known is { } corrected && (corrected.PupilId != pupil || !corrected.IsPupils) ? Finding.Refused("EntryCorrectsForeign", where) : null;
    }
}
