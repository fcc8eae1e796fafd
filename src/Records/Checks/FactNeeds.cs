using Slantwise.Records.Entries;

namespace Slantwise.Records.Checks;

/// <summary>Which parts an entry must have, may have and must not have, by the kind of its fact: an extra part would put it beside the question it answers.</summary>
internal readonly record struct FactNeeds(Need Pupil, Need Task, Need Set, Need Trial)
{
    public static FactNeeds Of(EntryFact fact) => fact switch
    {
        Presence => new(Need.Must, Need.MustNot, Need.MustNot, Need.MustNot),
        Choice or Prediction or CueTick or Decision => new(Need.Must, Need.Must, Need.Must, Need.MustNot),
        Entries.Trial => new(Need.Must, Need.Must, Need.Must, Need.Must),
        TeacherCheck => new(Need.Must, Need.Must, Need.May, Need.May),
        Visit => new(Need.Must, Need.May, Need.May, Need.MustNot),
        Note => new(Need.May, Need.May, Need.MustNot, Need.MustNot),
        PhaseMark or EngagementScan => new(Need.MustNot, Need.MustNot, Need.MustNot, Need.MustNot),
        _ => new(Need.May, Need.May, Need.May, Need.May),
    };

    public bool Fits(Guid? pupilId, Guid? taskId, int? setNumber, int? trialNumber) =>
        Fits(Pupil, pupilId is not null) && Fits(Task, taskId is not null) && Fits(Set, setNumber is not null) && Fits(Trial, trialNumber is not null);

    private static bool Fits(Need need, bool isThere) => need switch
    {
        Need.Must => isThere,
        Need.MustNot => !isThere,
        _ => true,
    };
}

internal enum Need
{
    May,
    Must,
    MustNot,
}
