using Slantwise.Engines.Statistics.Responses.Border;

namespace Slantwise.Engines.Statistics.Responses.Spread;

/// <summary>Holds a fit against its conditional twin, made with the same assumptions and the likeliest spread of residuals.</summary>
internal static class ChoiceCheck
{
    public static ChoiceComparison[] Of(ResponseData data, ResponseOptions options, ResponseWork work, BorderDesign design, BorderPoint peak)
    {
        var twin = ConditionalModel.Fit(data, options with { ResidualSdLogits = peak.Scales.Residual }, work with { Progress = null });
        if (twin.Point is null) return [];
        var found = new List<ChoiceComparison>();
        foreach (var column in design.Columns.Where(c => c.Kind is CoefficientKind.DoseSlope or CoefficientKind.Order))
        {
            var slopes = twin.SlopesOf(column.Kind, column.Index);
            if (slopes.All(s => s == 0)) continue;
            var own = new double[design.Size];
            own[design.Columns.IndexOf(column)] = 1;
            Compare(found, column.Kind, column.Index, own, slopes, peak, twin);
        }

        // Of the levels as a whole: how much the second reading stretches the first. A spread beyond the mean of those tried is needed.
        var tried = data.Trials.Select(t => t.Level).Distinct().Order().ToArray();
        var mean = tried.Select(j => peak.Pupils.Rows[j]).DefaultIfEmpty(0).Average();
        var square = tried.Sum(j => Math.Pow(peak.Pupils.Rows[j] - mean, 2));
        if (!(square > 1e-6)) return [.. found];
        var byLevel = new double[design.Layout.Levels];
        foreach (var j in tried) byLevel[j] = (peak.Pupils.Rows[j] - mean) / square;
        Compare(found, null, 0, design.ToBorder([.. byLevel, .. new double[design.Layout.RowCount - byLevel.Length]]), twin.SlopesOf(byLevel), peak, twin);
        return [.. found];
    }

    private static void Compare(List<ChoiceComparison> found, CoefficientKind? kind, int index, double[] own, double[] other, BorderPoint peak, ConditionalFit twin)
    {
        var value = own.Zip(peak.Border, (s, b) => s * b).Sum();
        var (twinValue, twinSd) = twin.Of(other)!.Value;
        found.Add(new(kind, index, value, twinValue, Math.Sqrt(peak.Factor.InverseForm(own) + twinSd * twinSd)));
    }
}
