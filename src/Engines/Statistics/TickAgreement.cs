namespace Slantwise.Engines.Statistics;

/// <summary>How a pupil's ticks agree with what the teacher saw of the same cues.</summary>
/// <param name="BothCount">Ticked, and seen by the teacher.</param>
/// <param name="OnlyPupilCount">Ticked, not seen by the teacher.</param>
/// <param name="OnlyTeacherCount">Not ticked, seen by the teacher.</param>
/// <param name="NeitherCount">Not ticked, not seen.</param>
/// <remarks>Sources: [Cohen1960] for kappa; [Byrt1993] for the prevalence- and bias-adjusted kappa.</remarks>
public readonly record struct TickAgreement(int BothCount, int OnlyPupilCount, int OnlyTeacherCount, int NeitherCount)
{
    /// <summary>The cues compared.</summary>
    public int ComparedCount => BothCount + OnlyPupilCount + OnlyTeacherCount + NeitherCount;

    /// <summary>The share on which both agree, 0 to 1; none where nothing was compared.</summary>
    public double? AgreementFraction => Share(BothCount + NeitherCount, ComparedCount);

    /// <summary>Of the cues the teacher did not see, the share that was ticked; none where the teacher saw them all.</summary>
    public double? OverReportFraction => Share(OnlyPupilCount, OnlyPupilCount + NeitherCount);

    /// <summary>Of the cues the teacher saw, the share that was not ticked; none where the teacher saw none.</summary>
    public double? UnderReportFraction => Share(OnlyTeacherCount, OnlyTeacherCount + BothCount);

    /// <summary>Agreement beyond chance, -1 to 1; not defined, so none, where nothing was compared or both gave one answer throughout.</summary>
    public double? KappaFraction
    {
        get
        {
            long n = ComparedCount;
            long pupil = BothCount + OnlyPupilCount, teacher = BothCount + OnlyTeacherCount;
            // In whole numbers, so that "no disagreement was possible" is an exact 0 and not a rounding.
            var chance = pupil * teacher + (n - pupil) * (n - teacher);
            var room = n * n - chance;
            return room == 0 ? null : (double)(n * (BothCount + NeitherCount) - chance) / room;
        }
    }

    /// <summary>Twice the agreement less one, -1 to 1: kappa as it would be with even answers; none where nothing was compared.</summary>
    public double? AdjustedKappaFraction => AgreementFraction is { } share ? 2 * share - 1 : null;

    private static double? Share(int part, int whole) => whole == 0 ? null : (double)part / whole;
}
