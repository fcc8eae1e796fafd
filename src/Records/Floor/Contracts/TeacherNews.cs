using Slantwise.Records.Entries;

namespace Slantwise.Records.Floor.Contracts;

/// <summary>What is sent to the teacher as it happens; each part only when it is new.</summary>
/// <param name="Entries">Entries the store has received since the last news, from anywhere: devices, desk, paper.</param>
/// <param name="Devices">All devices, where any of them changed; else none.</param>
/// <param name="Questions">What could be asked now, safety first; none where it has not changed.</param>
public sealed record TeacherNews(IReadOnlyList<Entry> Entries, IReadOnlyList<DeviceSeen>? Devices, IReadOnlyList<LiveQuestion>? Questions);
