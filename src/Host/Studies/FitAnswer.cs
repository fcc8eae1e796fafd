using System.Text.Json;
using Slantwise.Engines.Statistics.Responses;
using Slantwise.Host.Answers;

namespace Slantwise.Host.Studies;

/// <summary>What a fit found, as lines and as JSON.</summary>
/// <param name="study">What was read.</param>
/// <param name="options">How it was fitted.</param>
/// <param name="fit">What came of it.</param>
/// <param name="lesson">The lesson, by its number in the table, in which abilities and chances are said.</param>
/// <param name="covariates">Names of further covariates of levels.</param>
/// <param name="conditional">The levels with abilities conditioned away; none where that was not asked for.</param>
/// <param name="hasChances">Whether every pupil's chance at every level is said, too.</param>
internal sealed class FitAnswer(TrialStudy study, ResponseOptions options, ResponseFit fit, int lesson, IReadOnlyList<string> covariates, ConditionalFit? conditional, bool hasChances)
{
    private const int MostPupils = 60;

    private readonly (int Successes, int Trials)[] _byLevel = Tallies(study, t => t.Level, study.Levels.Count), _byPupil = Tallies(study, t => t.Pupil, study.Pupils.Count);

    private int Lesson => lesson - study.FirstLesson;

    public object Json => new
    {
        pupilCount = study.Pupils.Count,
        levelCount = study.Levels.Count,
        trialCount = _byLevel.Sum(l => l.Trials),
        successCount = _byLevel.Sum(l => l.Successes),
        firstLesson = study.FirstLesson,
        lastLesson = study.FirstLesson + fit.LastLesson,
        priors = options.IsFlat ? "flat" : "standard",
        nodeCount = options.NodeCount,
        driftSdLogits = options.DriftSdLogits,
        logLikelihoodNats = Numbers.Finite(fit.LogLikelihoodNats),
        evidenceNats = fit.EvidenceNats is { } evidence ? Numbers.Finite(evidence) : null,
        abilitySpread = Spread(fit.AbilitySpread),
        residualSpread = fit.ResidualSpread is { } residual ? Spread(residual) : null,
        coefficients = fit.Coefficients.Select(c => new { kind = c.Kind, of = Of(c.Kind, c.Index), estimate = Estimated(c.Value) }),
        levels = study.Levels.Select((level, j) => new
        {
            level = level.Name,
            task = level.Task,
            dose = level.Amount,
            measure = level.Amount is null ? (DoseMeasure?)null : level.Measure,
            successCount = _byLevel[j].Successes,
            trialCount = _byLevel[j].Trials,
            difficulty = Estimated(fit.Difficulty(j)),
            conditionalDifficulty = Estimated(ConditionalOf(j)),
            falseStarts = fit.FalseStarts[j] is { TimedFailureCount: > 0 } starts ? new { starts.FalseStartCount, starts.TimedFailureCount } : null,
        }),
        abilityInLesson = lesson,
        pupils = study.Pupils.Select((pupil, i) => new
        {
            pupil,
            successCount = _byPupil[i].Successes,
            trialCount = _byPupil[i].Trials,
            ability = Estimated(fit.Ability(i, Lesson)),
            chances = hasChances ? Chances(i) : null,
        }),
        conditional = conditional is null ? null : new
        {
            logLikelihoodNats = conditional.LogLikelihoodNats, against = Against is { } first ? study.Levels[first].Name : null, growth = Estimated(conditional.Growth), cautions = CautionLines.Names(conditional.Cautions),
        },
        choice = fit.Choice.Select(c => new
        {
            slope = c.Slope, of = c.Slope is { } kind ? Of(kind, c.Index) : null, c.MarginalLogits, c.ConditionalLogits, c.JointSdLogits, gapSd = Numbers.Finite(c.GapSd), c.IsFar,
        }),
        linkedGroupCount = fit.Connectedness.GroupCount,
        isTwoSided = fit.Connectedness.IsTwoSided,
        timesLeftAsideCount = fit.TimesLeftAsideCount,
        roundCount = fit.RoundCount,
        distanceSd = Numbers.Finite(fit.DistanceSd),
        cautions = CautionLines.Names(fit.Cautions),
        notes = FindingLines.ToJson(study.Notes),
    };

    public IEnumerable<string> Lines()
    {
        yield return StudyWords.Say("FitOf", _byLevel.Sum(l => l.Trials), study.Pupils.Count, study.Levels.Count, study.FirstLesson, study.FirstLesson + fit.LastLesson);
        yield return StudyWords.Say(options.IsFlat ? "FitFlat" : "FitStandard");
        foreach (var caution in CautionLines.Sentences(fit.Cautions)) yield return "! " + caution;
        yield return StudyWords.Say("FitLikelihood", fit.LogLikelihoodNats, options.NodeCount, fit.RoundCount);
        if (fit.EvidenceNats is { } evidence) yield return StudyWords.Say("FitEvidence", evidence);
        yield return Said("FitAbilitySpread", fit.AbilitySpread);
        if (fit.ResidualSpread is { } residual) yield return Said("FitResidualSpread", residual);
        if (fit.Coefficients is { Count: > 0 } coefficients)
        {
            yield return "";
            var table = new TextColumns(1, StudyWords.Say("HeadCoefficient"), StudyWords.Say("HeadLogits"), "±", StudyWords.Say("HeadData"), "");
            foreach (var c in coefficients) table.Add([NameOf(c), .. Cells(c.Value)]);
            foreach (var line in table.Lines) yield return line;
        }

        yield return "";
        var levels = new TextColumns(1, StudyWords.Say("HeadLevel"), StudyWords.Say("HeadTrials"), StudyWords.Say("HeadSuccesses"), StudyWords.Say("HeadDifficulty"), "±", StudyWords.Say("HeadData"), "");
        for (var j = 0; j < study.Levels.Count; j++)
            levels.Add([study.Levels[j].Name, Numbers.Of(_byLevel[j].Trials), Numbers.Of(_byLevel[j].Successes), .. Cells(fit.Difficulty(j))]);
        foreach (var line in levels.Lines) yield return line;

        foreach (var line in Conditioned()) yield return line;

        yield return "";
        yield return StudyWords.Say("FitAbilities", lesson);
        var pupils = new TextColumns(1, StudyWords.Say("HeadPupil"), StudyWords.Say("HeadTrials"), StudyWords.Say("HeadSuccesses"), StudyWords.Say("HeadAbility"), "±", StudyWords.Say("HeadData"), "");
        for (var i = 0; i < Math.Min(MostPupils, study.Pupils.Count); i++)
            pupils.Add([study.Pupils[i], Numbers.Of(_byPupil[i].Trials), Numbers.Of(_byPupil[i].Successes), .. Cells(fit.Ability(i, Lesson))]);
        foreach (var line in pupils.Lines) yield return line;
        if (study.Pupils.Count > MostPupils) yield return StudyWords.Say("FitMorePupils", study.Pupils.Count - MostPupils);
        yield return StudyWords.Say("FitLegend");
    }

    private static (int Successes, int Trials)[] Tallies(TrialStudy study, Func<ResponseTrial, int> place, int count)
    {
        var tallies = new (int Successes, int Trials)[count];
        foreach (var trial in study.Data.Trials)
        {
            ref var tally = ref tallies[place(trial)];
            tally = (tally.Successes + trial.Successes, tally.Trials + trial.Trials);
        }
        return tallies;
    }

    private static object Spread(ScaleEstimate spread) => new { medianLogits = spread.MedianLogits, logSd = spread.LogSd, sdLogits = spread.SdLogits };

    private static object? Estimated(Estimate? estimate) => estimate is not { } e ? null : new
    {
        meanLogits = Numbers.Finite(e.MeanLogits), sdLogits = Numbers.Finite(e.SdLogits), dataShareFraction = Numbers.Finite(e.DataShareFraction), cautions = CautionLines.Names(e.Cautions),
    };

    private IEnumerable<object?> Chances(int pupil) => fit.Chances(pupil, [.. Enumerable.Range(0, study.Levels.Count)], Lesson).Select((chance, j) =>
    {
        if (chance is null) return null;
        var (low, high) = chance.Range(0.9);
        return (object)new { level = study.Levels[j].Name, chance.TrialCount, chance.ChanceFraction, lowFraction = low, highFraction = high, logit = Estimated(chance.Logit) };
    });

    /// <summary>Which of its kind, for programs; none where there is one only.</summary>
    private string? Of(CoefficientKind kind, int index) => kind switch
    {
        CoefficientKind.DoseSlope => JsonNamingPolicy.CamelCase.ConvertName(((DoseMeasure)index).ToString()),
        CoefficientKind.LevelCovariate => covariates[index],
        _ => null,
    };

    private string NameOf(CoefficientEstimate c) => c.Kind switch
    {
        CoefficientKind.DoseSlope => StudyWords.Say("CoefficientDoseSlope", StudyWords.Say("Measure" + (DoseMeasure)c.Index)),
        CoefficientKind.LevelCovariate => StudyWords.Say("CoefficientLevelCovariate", covariates[c.Index]),
        _ => StudyWords.Say("Coefficient" + c.Kind),
    };

    /// <summary>The level that the others are held against, where assumptions place the middle and only differences are found; none where their mean is 0.</summary>
    private int? Against => options.IsFlat ? null : Enumerable.Range(0, _byLevel.Length).Where(j => _byLevel[j].Trials > 0).Cast<int?>().FirstOrDefault();

    private Estimate? ConditionalOf(int level) => Against is { } first ? conditional?.Contrast(level, first) : conditional?.Difficulty(level);

    private IEnumerable<string> Conditioned()
    {
        if (conditional is null) yield break;
        yield return "";
        if (conditional.LogLikelihoodNats is not { } likelihood)
        {
            yield return StudyWords.Say("ConditionalUndefined");
            yield break;
        }
        yield return StudyWords.Say("ConditionalSays", likelihood);
        yield return Against is { } first ? StudyWords.Say("ConditionalAgainst", study.Levels[first].Name) : StudyWords.Say("ConditionalCentred");
        var levels = new TextColumns(1, StudyWords.Say("HeadLevel"), StudyWords.Say("HeadTrials"), StudyWords.Say("HeadDifficulty"), "±");
        for (var j = 0; j < study.Levels.Count; j++)
            levels.Add(study.Levels[j].Name, Numbers.Of(_byLevel[j].Trials), Numbers.Of(ConditionalOf(j)?.MeanLogits), Numbers.Of(ConditionalOf(j)?.SdLogits));
        foreach (var line in levels.Lines) yield return line;
    }

    private static string Said(string key, ScaleEstimate spread) => spread.LogSd == 0
        ? StudyWords.Say(key, spread.MedianLogits) + StudyWords.Say("FitSpreadGiven")
        : StudyWords.Say(key, spread.MedianLogits) + StudyWords.Say("FitSpreadRange", spread.MedianLogits * Math.Exp(-1.645 * spread.LogSd), spread.MedianLogits * Math.Exp(1.645 * spread.LogSd));

    private static string[] Cells(Estimate? estimate) => estimate is not { } e
        ? [Numbers.None, Numbers.None, Numbers.None, StudyWords.Say("NotDefined")]
        : [Numbers.Of(e.MeanLogits), Numbers.Of(e.SdLogits), Numbers.Of(e.DataShareFraction, 2), Short(e.Cautions)];

    // What concerns the whole is said at its head.
    private static string Short(ResponseCaution cautions) => string.Join(", ", new[] { ResponseCaution.NoTrials, ResponseCaution.MostlyAssumption, ResponseCaution.Disconnected }
        .Where(c => cautions.HasFlag(c)).Select(c => StudyWords.Say("Short" + c)));
}
