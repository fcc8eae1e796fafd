namespace Slantwise.Engines.Statistics.Holds;

/// <summary>Curves of hold times fitted to timed, stopped and merely judged holds.</summary>
/// <param name="Curves">The curves; none where the holds cannot tell, and then a caution says why.</param>
/// <param name="HoldCount">The holds.</param>
/// <param name="FallenCount">Those known to have ended.</param>
/// <param name="PupilCount">The pupils; as many as holds where no pupil is named.</param>
/// <param name="IsByPupil">Whether the errors come from leaving out one pupil at a time, as they do where a pupil has several holds.</param>
/// <param name="RoundCount">Rounds the search took.</param>
/// <param name="Cautions">What to know before believing it.</param>
public sealed record HoldFit(
    FittedLaw? Curves, int HoldCount, int FallenCount, int PupilCount, bool IsByPupil, int RoundCount, HoldCautions Cautions)
{
    private const int RoundsAtMost = 100;

    /// <summary>The curves that make the holds most likely.</summary>
    /// <param name="law">Their shape.</param>
    /// <param name="holds">Any number, any order. Where one pupil has several, the errors come from leaving out one pupil at a time, else from the bend of the likelihood.</param>
    /// <param name="groupCount">Groups, 1 or more; each has its own scale, all share one spread.</param>
    /// <exception cref="ArgumentOutOfRangeException">No group; a hold of no such group; a span that ends before it begins, at 0, or is not finite; a law that is none of the two.</exception>
    /// <remarks>
    /// Newton's method in the slope and the groups' places, in which the likelihood has a single top.
    /// Sources: [Burridge1981] for the single top; [KalbfleischPrentice2002] chapter 3; [Efron1982] chapter 3 for leaving out pupils, by one step of Newton's method each.
    /// </remarks>
    public static HoldFit Fit(HoldLaw law, IReadOnlyList<GroupedHold> holds, int groupCount)
    {
        if (!Enum.IsDefined(law)) throw new ArgumentOutOfRangeException(nameof(law), law, "A law is log-logistic or Weibull's.");
        if (groupCount < 1) throw new ArgumentOutOfRangeException(nameof(groupCount), groupCount, "At least 1 group is needed.");
        foreach (var (span, group, _) in holds)
        {
            if (group < 0 || group >= groupCount)
                throw new ArgumentOutOfRangeException(nameof(holds), group, $"Groups are numbered from 0 to {groupCount - 1}.");
            Check(span);
        }

        var cautions = Cannot(holds, groupCount);
        var named = holds.Where(h => h.Pupil is not null).Select(h => h.Pupil).Distinct().Count();
        var pupils = named + holds.Count(h => h.Pupil is null);
        var byPupil = pupils < holds.Count;
        var fallen = holds.Count(h => h.Span.HighS is not null);
        if (cautions != HoldCautions.None) return new(null, holds.Count, fallen, pupils, byPupil, 0, cautions | Few(holds.Count, byPupil, pupils));

        var search = new LawSearch(law, holds, groupCount);
        var rounds = search.Climb(RoundsAtMost);
        if (rounds == RoundsAtMost) cautions = HoldCautions.NotConverged;
        else if (search.Slope <= 1e-6) cautions = HoldCautions.NoSlope;
        cautions |= Few(holds.Count, byPupil, pupils);
        var curves = (cautions & (HoldCautions.NotConverged | HoldCautions.NoSlope)) == 0 ? search.Curves(byPupil) : null;
        return new(curves, holds.Count, fallen, pupils, byPupil, rounds, cautions);
    }

    internal static void Check(HoldSpan span)
    {
        if (!(span.LowS >= 0 && double.IsFinite(span.LowS) && !(span.HighS <= 0 || span.HighS < span.LowS) && double.IsFinite(span.HighS ?? 0)))
            throw new ArgumentOutOfRangeException(nameof(span), span, "A span begins at 0 seconds or later and ends later than 0 and not before it begins.");
    }

    private static HoldCautions Few(int holdCount, bool byPupil, int pupilCount) =>
        (holdCount is > 0 and < KaplanMeier.FewHolds ? HoldCautions.FewHolds : 0) | (byPupil && pupilCount < KaplanMeier.FewPupils ? HoldCautions.FewPupils : 0);

    // A top exists when each group is known from both sides and no single length fits all of every group. Source: [Burridge1981].
    private static HoldCautions Cannot(IReadOnlyList<GroupedHold> holds, int groupCount)
    {
        if (holds.Count == 0) return HoldCautions.NoHolds;
        if (holds.All(h => h.Span.HighS is null)) return HoldCautions.NobodyFell;
        var groups = holds.GroupBy(h => h.Group, h => h.Span).ToList();
        if (groups.Count < groupCount || groups.Any(g => g.All(s => s.HighS is null) || g.All(s => s.LowS == 0))) return HoldCautions.OneSided;
        if (!groups.All(g => g.Max(s => s.LowS) <= g.Min(s => s.HighS ?? double.MaxValue))) return HoldCautions.None;
        var judgedAtOne = groups.All(g => g.All(s => !s.IsExact)
            && !g.SelectMany(s => new[] { s.LowS, s.HighS ?? 0 }).Where(t => t > 0).Distinct().Skip(1).Any());
        return judgedAtOne ? HoldCautions.OneLength : HoldCautions.NoSpread;
    }
}
