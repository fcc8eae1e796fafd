using Slantwise.Records.Entries;

namespace Slantwise.Surface.Tests.Floor;

/// <summary>A fact that a screen is to make hold, and what it is about.</summary>
internal sealed record Act(Guid? PupilId, Guid? TaskId, int? SetNumber, int? TrialNumber, EntryFact Fact)
{
    /// <summary>The same of an entry.</summary>
    public static Act Of(Entry entry) => new(entry.PupilId, entry.TaskId, entry.SetNumber, entry.TrialNumber, entry.Fact);
}
