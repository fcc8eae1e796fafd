using MathNet.Numerics.Distributions;

namespace Slantwise.Engines.Statistics.Agreement;

/// <summary>A figure whose range comes from leaving out one pupil at a time, as it has to where a pupil was judged more than once.</summary>
/// <param name="ValueFraction">The figure over all pupils; none where it is not defined.</param>
/// <param name="ErrorFraction">Its standard error; none for a single pupil and where it is not defined without some pupil.</param>
/// <param name="LowFraction">Lower end of the range, by Student's law with one degree less than pupils, at least −1.</param>
/// <param name="HighFraction">Upper end of the range, at most 1.</param>
/// <param name="PupilCount">The pupils with something judged by both.</param>
/// <param name="Cautions">What to know before believing it.</param>
/// <remarks>Sources: [Tukey1958]; [Efron1982] chapter 3.</remarks>
public readonly record struct JackknifedFigure(
    double? ValueFraction, double? ErrorFraction, double? LowFraction, double? HighFraction, int PupilCount, AgreementCautions Cautions)
{
    /// <summary>Any figure of a table, with its range over pupils.</summary>
    /// <param name="pupils">One table for each pupil, all with the same categories, at least one; an empty one says nothing and is passed over.</param>
    /// <param name="figure">From a table to the figure, none where it is not defined.</param>
    /// <param name="confidenceFraction">Between 0 and 1.</param>
    /// <exception cref="ArgumentException">No table; tables with different categories.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A confidence that is not between 0 and 1.</exception>
    public static JackknifedFigure Of(IReadOnlyList<AgreementTable> pupils, Func<AgreementTable, double?> figure, double confidenceFraction)
    {
        Confidence.Check(confidenceFraction);
        var all = AgreementTable.Sum(pupils);
        var judged = pupils.Where(t => t.PairCount > 0).ToList();
        var few = judged.Count < 6 ? AgreementCautions.FewPupils : 0;
        if (figure(all) is not { } value) return new(null, null, null, null, judged.Count, few | (all.PairCount == 0 ? AgreementCautions.NoPairs : AgreementCautions.OneCategory));
        if (judged.Count < 2) return new(value, null, null, null, judged.Count, few);

        var spread = new MeanSquare();
        foreach (var pupil in judged)
        {
            if (figure(all.Without(pupil)) is not { } without)
                return new(value, null, null, null, judged.Count, few | AgreementCautions.HangsOnOnePupil);
            spread.Add(without);
        }
        var error = spread.JackknifeError;
        var half = StudentT.InvCDF(0, 1, judged.Count - 1, (1 + confidenceFraction) / 2) * error;
        return new(value, error, Math.Max(-1, value - half), Math.Min(1, value + half), judged.Count, few);
    }
}
