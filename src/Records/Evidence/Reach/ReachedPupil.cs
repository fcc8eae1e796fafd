using Slantwise.Engines.Statistics.Reach;

namespace Slantwise.Records.Evidence.Reach;

/// <summary>What a task's levels offer one pupil.</summary>
/// <param name="PupilId">The pupil.</param>
/// <param name="Label">What to call the pupil.</param>
/// <param name="Reach">The chances to be included and stretched.</param>
/// <param name="Levels">What is believed at each level of the sheet, in its order; none where policy or a restriction has removed it.</param>
/// <param name="TrialCount">Trials of this pupil behind it, over all tasks.</param>
/// <param name="IsMostlyAssumed">Whether more of it was assumed than seen.</param>
public sealed record ReachedPupil(
    Guid PupilId, string Label, PupilReach Reach, IReadOnlyList<LevelOutlook?> Levels, int TrialCount, bool IsMostlyAssumed)
{
    /// <summary>Whether the sheet probably has no level for this pupil: a chance under one half to be included.</summary>
    public bool IsLeftOut => Reach.IncludedFraction < .5;

    /// <summary>How the levels stand to this pupil, as far as can be told.</summary>
    /// <param name="band">The band the reach was found for.</param>
    public ReachStanding StandingIn(ReachBand band)
    {
        if (Reach.AllowedCount == 0) return ReachStanding.NothingAllowed;
        if (!IsLeftOut) return ReachStanding.Within;
        if (Reach.StretchedFraction < .5) return ReachStanding.AllCertain;
        // The easiest allowed level is more likely than not below the band, and so are all others.
        var easiestLogits = Levels.OfType<LevelOutlook>().Max(l => l.MeanLogits);
        return easiestLogits < Math.Log(band.LowFraction / (1 - band.LowFraction)) ? ReachStanding.AllTooHard : ReachStanding.Open;
    }
}
