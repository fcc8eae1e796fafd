using Slantwise.Records.Entries;
using Slantwise.Records.Evidence;
using Slantwise.Records.Floor.Contracts;

namespace Slantwise.Records.Floor.Rooms;

/// <summary>A room at one moment, as far as a listener asks.</summary>
internal sealed record RoomView(
    FloorState? State, (long Lesson, long Device) StateVersion, IReadOnlyList<DeviceSeen> Devices, (long Devices, long Seen) DevicesVersion,
    IReadOnlyList<Conference> Questions, long QuestionsVersion, IReadOnlyList<Entry> Entries, long LogVersion, int EntryCount, bool HasMoreEntries);
