using Slantwise.Engines.Statistics.Holds;
using Slantwise.Host.Answers;

namespace Slantwise.Host.Studies;

/// <summary>How long things lasted, as lines and as JSON.</summary>
/// <param name="study">The times.</param>
/// <param name="confidenceFraction">Of ranges.</param>
/// <param name="limitS">Up to where the mean is taken; none for no mean.</param>
/// <param name="resolution">To what times are rounded; none to take them as exact.</param>
internal sealed class SurvivalAnswer(HoldStudy study, double confidenceFraction, double? limitS, double? resolution)
{
    private readonly List<HoldCurve> _curves = [.. study.Holds.Select(h => KaplanMeier.Of(h, confidenceFraction))];
    private readonly LogRank? _logRank = study.Groups.Count > 1 ? LogRank.Of(study.Holds) : null;
    private readonly List<(HoldLaw Law, HoldFit Fit)> _laws = [.. Enum.GetValues<HoldLaw>().Select(law => (law, HoldFit.Fit(law, Spans(study, resolution), study.Groups.Count)))];

    public object Json => new
    {
        confidenceFraction,
        resolution,
        groups = study.Groups.Zip(_curves, (name, curve) => new
        {
            group = name,
            curve.HoldCount,
            curve.FallenCount,
            curve.PupilCount,
            curve.IsByPupil,
            median = new { curve.Median.MedianS, curve.Median.LowS, curve.Median.HighS },
            meanToLimitS = limitS is { } limit ? curve.MeanS(limit) : null,
            steps = curve.Steps,
            cautions = CautionLines.Names(curve.Cautions),
        }),
        limitS,
        logRank = _logRank is null ? null : new
        {
            _logRank.ChiSquareSd2,
            _logRank.DegreesCount,
            _logRank.ChanceFraction,
            groups = study.Groups.Zip(_logRank.Groups, (name, g) => new { group = name, g.HoldCount, g.FallenCount, g.ExpectedCount }),
            cautions = CautionLines.Names(_logRank.Cautions),
        },
        laws = _laws.Select(l => new
        {
            law = l.Law,
            isDefined = l.Fit.Curves is not null,
            logLikelihoodNats = l.Fit.Curves?.LogLikelihoodNats,
            spreadNats = l.Fit.Curves?.SpreadNats,
            logSpreadErrorNats = l.Fit.Curves?.LogSpreadErrorNats,
            l.Fit.IsByPupil,
            groups = l.Fit.Curves is { } curves ? study.Groups.Select((name, g) => new
            {
                group = name,
                logScale = curves.ScaleOf(g),
                medianS = curves.TimeS(g, 0.5),
                // How much longer than the first group, on the scale of logarithms.
                difference = g == 0 ? (LogScale?)null : curves.Difference(g, 0),
            }) : null,
            cautions = CautionLines.Names(l.Fit.Cautions),
        }),
        notes = FindingLines.ToJson(study.Notes),
    };

    public IEnumerable<string> Lines()
    {
        var medians = new TextColumns(1, StudyWords.Say("HeadGroup"), StudyWords.Say("HeadTimes"), StudyWords.Say("HeadEnded"), StudyWords.Say("HeadMedian"), StudyWords.Say("HeadRange"), "");
        foreach (var (name, curve) in study.Groups.Zip(_curves))
            medians.Add(
                Named(name), Numbers.Of(curve.HoldCount), Numbers.Of(curve.FallenCount), Numbers.Of(curve.Median.MedianS, 2), Numbers.Range(curve.Median.LowS, curve.Median.HighS, 2),
                curve.Median.MedianS is null ? StudyWords.Say("MedianNotReached") : "");
        foreach (var line in medians.Lines) yield return line;
        foreach (var caution in CautionLines.Sentences(_curves.Aggregate(HoldCautions.None, (all, c) => all | c.Cautions))) yield return "! " + caution;
        if (limitS is { } limit)
        {
            foreach (var (name, curve) in study.Groups.Zip(_curves))
                yield return curve.MeanS(limit) is { } mean ? StudyWords.Say("MeanToLimit", Named(name), limit, mean) : StudyWords.Say("MeanNotKnown", Named(name), limit);
        }
        foreach (var (name, curve) in study.Groups.Zip(_curves))
        {
            yield return "";
            yield return StudyWords.Say("SurvivalCurve", Named(name), curve.HoldCount, StudyWords.Say(curve.IsByPupil ? "ErrorsByPupil" : "ErrorsByTime"));
            foreach (var line in Steps(curve).Lines) yield return line;
        }
        foreach (var line in Compared()) yield return line;
        foreach (var line in Fitted()) yield return line;
        yield return StudyWords.Say("SurvivalLegend", confidenceFraction * 100);
    }

    private static string Named(string group) => group.Length > 0 ? group : StudyWords.Say("GroupOfAll");

    private static TextColumns Steps(HoldCurve curve)
    {
        var steps = new TextColumns(0, StudyWords.Say("HeadTime"), StudyWords.Say("HeadAtRisk"), StudyWords.Say("HeadEnded"), StudyWords.Say("HeadStopped"), StudyWords.Say("HeadShare"), "±", StudyWords.Say("HeadRange"), "");
        foreach (var s in curve.Steps)
            steps.Add(
                Numbers.Of(s.TimeS, 2), Numbers.Of(s.AtRiskCount), Numbers.Of(s.FallenCount), Numbers.Of(s.StoppedCount), Numbers.Of(s.HeldFraction), Numbers.Of(s.ErrorFraction),
                Numbers.Range(s.LowFraction, s.HighFraction), s.IsThin ? StudyWords.Say("Thin") : "");
        return steps;
    }

    private static List<GroupedHold> Spans(HoldStudy study, double? resolution) => [.. study.Holds.SelectMany((holds, group) => holds.Select(h => new GroupedHold(
        h.HasFallen ? resolution is { } r ? new(Math.Max(0, h.HeldS - r / 2), h.HeldS + r / 2) : new(h.HeldS, h.HeldS) : new HoldSpan(h.HeldS, null), group, h.Pupil)))];

    private IEnumerable<string> Compared()
    {
        if (_logRank is null) yield break;
        yield return "";
        yield return _logRank.ChiSquareSd2 is { } chi
            ? StudyWords.Say("LogRankSays", chi, _logRank.DegreesCount, Numbers.Chance(_logRank.ChanceFraction))
            : StudyWords.Say("LogRankUndefined");
        var groups = new TextColumns(1, StudyWords.Say("HeadGroup"), StudyWords.Say("HeadTimes"), StudyWords.Say("HeadEnded"), StudyWords.Say("HeadExpected"));
        foreach (var (name, g) in study.Groups.Zip(_logRank.Groups)) groups.Add(Named(name), Numbers.Of(g.HoldCount), Numbers.Of(g.FallenCount), Numbers.Of(g.ExpectedCount, 2));
        foreach (var line in groups.Lines) yield return line;
        if (_logRank.Cautions.HasFlag(HoldCautions.RepeatedPupils)) yield return "! " + StudyWords.Say("HoldCautionsRepeatedPupils");
    }

    private IEnumerable<string> Fitted()
    {
        foreach (var (law, fit) in _laws)
        {
            yield return "";
            if (fit.Curves is not { } curves)
            {
                yield return StudyWords.Say("LawUndefined", StudyWords.Say("Law" + law));
                foreach (var caution in CautionLines.Sentences(fit.Cautions)) yield return "! " + caution;
                continue;
            }
            yield return StudyWords.Say("LawFitted", StudyWords.Say("Law" + law), fit.HoldCount, curves.LogLikelihoodNats, curves.SpreadNats, curves.LogSpreadErrorNats);
            var groups = new TextColumns(1, StudyWords.Say("HeadGroup"), StudyWords.Say("HeadLogScale"), "±", StudyWords.Say("HeadMedian"), StudyWords.Say("HeadRatio", Named(study.Groups[0])), "± log");
            for (var g = 0; g < study.Groups.Count; g++)
            {
                var (scale, difference) = (curves.ScaleOf(g), g == 0 ? (LogScale?)null : curves.Difference(g, 0));
                groups.Add(
                    Named(study.Groups[g]), Numbers.Of(scale.ValueNats), Numbers.Of(scale.ErrorNats), Numbers.Of(curves.TimeS(g, 0.5), 2),
                    Numbers.Of(difference is { } d ? Math.Exp(d.ValueNats) : null, 2), Numbers.Of(difference?.ErrorNats));
            }
            foreach (var line in groups.Lines) yield return line;
        }
    }
}
