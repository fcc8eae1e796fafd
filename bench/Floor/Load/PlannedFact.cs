using Slantwise.Records.Entries;

namespace Slantwise.Bench.Floor.Load;

/// <summary>What a pupil writes, and when.</summary>
internal readonly record struct PlannedFact(double AtS, Guid PupilId, Guid TaskId, int SetNumber, int? TrialNumber, EntryFact Fact);
