using Slantwise.Engines.Statistics.Predictions;
using Slantwise.Host.Answers;

namespace Slantwise.Host.Studies;

/// <summary>What predictions were worth, as lines and as JSON.</summary>
/// <param name="study">The predictions.</param>
/// <param name="confidenceFraction">Of ranges.</param>
/// <param name="ranges">Into how many equal ranges chances are put for the parts of the score; none for each chance by itself.</param>
internal sealed class CalibrationAnswer(ForecastStudy study, double confidenceFraction, int? ranges)
{
    private readonly List<Forecast> _all = [.. study.Forecasts.Select(f => f.Forecast)];

    private PredictionScores Scores => PredictionScores.Of(_all);

    private BrierParts Parts => ranges is { } k ? BrierParts.Of(_all, [.. Enumerable.Range(1, k - 1).Select(i => (double)i / k)]) : BrierParts.Of(_all);

    private CalibrationCurve Curve => CalibrationCurve.Of(_all);

    private GoodmanKruskalGamma Gamma => GoodmanKruskalGamma.Of(_all);

    public object Json => new
    {
        confidenceFraction,
        scores = ScoresOf(Scores),
        parts = Parts is var p ? new
        {
            by = ranges is null ? "chance" : "range",
            p.BrierFraction, p.ReliabilityFraction, p.ResolutionFraction, p.UncertaintyFraction, p.WithinVarianceFraction, p.WithinCovarianceFraction,
            groups = p.Groups.Select(g => new
            {
                g.PredictedFraction, g.TrialCount, g.SuccessCount, g.ObservedFraction, g.Range(confidenceFraction).LowFraction, g.Range(confidenceFraction).HighFraction, g.IsShown,
            }),
        } : null,
        curve = Curve is var c ? new
        {
            c.BrierFraction, c.MiscalibrationFraction, c.DiscriminationFraction, c.UncertaintyFraction,
            blocks = c.Blocks.Select(b => new { b.LowFraction, b.HighFraction, b.TrialCount, b.SuccessCount, b.ObservedFraction }),
        } : null,
        gamma = Gamma,
        groups = study.HasGroups ? Split(f => f.Group).Select(g => new { group = g.Name, scores = ScoresOf(g.Scores) }) : null,
        pupils = study.HasPupils ? Split(f => f.Pupil).Select(g => new { pupil = g.Name, scores = ScoresOf(g.Scores) }) : null,
        notes = FindingLines.ToJson(study.Notes),
    };

    public IEnumerable<string> Lines()
    {
        var scores = Scores;
        yield return StudyWords.Say("CalibrationOf", scores.SetCount, scores.TrialCount, Numbers.Of(scores.BaseRateFraction));
        foreach (var caution in CautionLines.Sentences(scores.Cautions)) yield return "! " + caution;
        if (scores.BiasFraction is not { } bias) yield break;
        yield return StudyWords.Say(bias > 0 ? "BiasOver" : bias < 0 ? "BiasUnder" : "BiasNone", Math.Abs(bias));
        yield return StudyWords.Say("AbsoluteError", Numbers.Of(scores.AbsoluteErrorFraction));
        yield return StudyWords.Say("BrierSays", Numbers.Of(scores.BrierFraction, 4), scores.SkillFraction is { } skill ? StudyWords.Say("SkillSays", skill) : StudyWords.Say("SkillUndefined"));
        yield return scores.LogLossNats is { } loss ? StudyWords.Say("LogLossSays", loss) : StudyWords.Say("LogLossUndefined");
        yield return Gamma is { GammaFraction: { } gamma } g ? StudyWords.Say("GammaSays", gamma, g.OrderedCount, g.ReversedCount) : StudyWords.Say("GammaUndefined");
        foreach (var line in PartLines()) yield return line;
        foreach (var line in CurveLines()) yield return line;
        if (study.HasGroups) foreach (var line in SplitLines("HeadGroup", Split(f => f.Group))) yield return line;
        if (study.HasPupils) foreach (var line in SplitLines("HeadPupil", Split(f => f.Pupil))) yield return line;
        yield return StudyWords.Say("CalibrationLegend", confidenceFraction * 100);
    }

    private static object ScoresOf(PredictionScores s) => new
    {
        s.SetCount, s.TrialCount, s.BaseRateFraction, s.BiasFraction, s.AbsoluteErrorFraction, s.BrierFraction, s.LogLossNats, s.SkillFraction, cautions = CautionLines.Names(s.Cautions),
    };

    private IEnumerable<(string Name, PredictionScores Scores)> Split(Func<(Forecast Forecast, string Group, string Pupil), string> by) =>
        study.Forecasts.GroupBy(by).Select(g => (g.Key, PredictionScores.Of([.. g.Select(f => f.Forecast)])));

    private IEnumerable<string> PartLines()
    {
        var parts = Parts;
        yield return "";
        yield return StudyWords.Say(ranges is null ? "PartsByChance" : "PartsByRange", Numbers.Of(parts.BrierFraction, 4), Numbers.Of(parts.ReliabilityFraction, 4),
            Numbers.Of(parts.ResolutionFraction, 4), Numbers.Of(parts.UncertaintyFraction, 4), Numbers.Of(parts.WithinVarianceFraction, 4), Numbers.Of(parts.WithinCovarianceFraction, 4));
        var table = new TextColumns(0, StudyWords.Say("HeadPredicted"), StudyWords.Say("HeadTrials"), StudyWords.Say("HeadSuccesses"), StudyWords.Say("HeadShare"), StudyWords.Say("HeadRange"), "");
        foreach (var g in parts.Groups)
            table.Add(
                Numbers.Of(g.PredictedFraction), Numbers.Of(g.TrialCount), Numbers.Of(g.SuccessCount), g.IsShown ? Numbers.Of(g.ObservedFraction) : Numbers.None,
                g.IsShown ? Numbers.Range(g.Range(confidenceFraction).LowFraction, g.Range(confidenceFraction).HighFraction) : Numbers.None, g.IsShown ? "" : StudyWords.Say("TooFewTrials"));
        foreach (var line in table.Lines) yield return line;
    }

    private IEnumerable<string> CurveLines()
    {
        var curve = Curve;
        yield return "";
        yield return StudyWords.Say("CurveSays", Numbers.Of(curve.BrierFraction, 4), Numbers.Of(curve.MiscalibrationFraction, 4), Numbers.Of(curve.DiscriminationFraction, 4), Numbers.Of(curve.UncertaintyFraction, 4));
        var table = new TextColumns(0, StudyWords.Say("HeadPredicted"), StudyWords.Say("HeadTrials"), StudyWords.Say("HeadSuccesses"), StudyWords.Say("HeadShare"));
        foreach (var b in curve.Blocks)
            table.Add(
                b.LowFraction == b.HighFraction ? Numbers.Of(b.LowFraction) : Numbers.Range(b.LowFraction, b.HighFraction), Numbers.Of(b.TrialCount), Numbers.Of(b.SuccessCount),
                b.IsShown ? Numbers.Of(b.ObservedFraction) : Numbers.None);
        foreach (var line in table.Lines) yield return line;
    }

    private static IEnumerable<string> SplitLines(string heading, IEnumerable<(string Name, PredictionScores Scores)> split)
    {
        yield return "";
        var table = new TextColumns(1, StudyWords.Say(heading), StudyWords.Say("HeadTrials"), StudyWords.Say("HeadBias"), StudyWords.Say("HeadError"), "Brier", StudyWords.Say("HeadSkill"));
        foreach (var (name, s) in split)
            table.Add(name, Numbers.Of(s.TrialCount), Numbers.Of(s.BiasFraction), Numbers.Of(s.AbsoluteErrorFraction), Numbers.Of(s.BrierFraction), Numbers.Of(s.SkillFraction));
        foreach (var line in table.Lines) yield return line;
    }
}
