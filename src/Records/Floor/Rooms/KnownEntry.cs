using Slantwise.Records.Entries;

namespace Slantwise.Records.Floor.Rooms;

/// <summary>What a room remembers of an entry: enough to tell it from another with its id, and to say who may correct it.</summary>
internal readonly record struct KnownEntry(string DeviceId, long DeviceSequence, Guid? PupilId, bool IsPupils)
{
    public static KnownEntry Of(Entry entry) => new(entry.DeviceId, entry.DeviceSequence, entry.PupilId, EntryRules.IsPupils(entry.Fact));
}
