using Slantwise.Engines.Statistics.Predictions;
using Slantwise.Engines.Statistics.Responses;
using Slantwise.Records.Evidence.Chances;
using Slantwise.Records.Lessons;

namespace Slantwise.Records.Evidence.Foresight;

/// <summary>What a class's predictions are worth: how they compare with what came, and with what was to be expected.</summary>
/// <param name="Scores">Every prediction that can be compared, beside what came.</param>
/// <param name="Luck">Optimism apart from luck; none where of no set enough was known before it.</param>
/// <param name="Bias">The class's and each pupil's bias beside what was to be expected, in the order of <paramref name="Pupils"/>.</param>
/// <param name="Pupils">By label, every pupil with a prediction that can be compared.</param>
/// <param name="EarlySetCount">Compared sets that stay out of luck and bias, because too little was known of pupil and level before them.</param>
public sealed record ClassForesight(
    PredictionScores Scores, OptimismAndLuck? Luck, PooledBias Bias, IReadOnlyList<PupilForesight> Pupils, int EarlySetCount)
{
    /// <summary>A side is named where its chance is at least this.</summary>
    public const double SureFraction = SuccessShare.RangeConfidenceFraction;

    /// <summary>From this skill on, predictions are called better than always saying the class's usual share, and from its negative on worse. A working rule, no source.</summary>
    public const double SkillFraction = .05;

    /// <summary>Where an even chance was to be expected, how many of ten the class says: lower end of the range of its mean.</summary>
    public double LowOfEvenFraction => EvenChance.Of(Bias.ClassMeanLogits - EvenChance.RangeDeviations * Bias.ClassMeanSdLogits);

    /// <summary>The same, upper end.</summary>
    public double HighOfEvenFraction => EvenChance.Of(Bias.ClassMeanLogits + EvenChance.RangeDeviations * Bias.ClassMeanSdLogits);

    /// <summary>The class's side, where its range leaves out 0.</summary>
    public BiasSign Sign => Luck is null ? BiasSign.Unclear
        : LowOfEvenFraction > .5 ? BiasSign.Over
        : HighOfEvenFraction < .5 ? BiasSign.Under
        : BiasSign.Unclear;

    /// <summary>
    /// Whether more or less came than chance explains, two standard deviations either way: pupils changed since, or the model was off, and part of the bias may be that.
    /// </summary>
    public bool IsExpectationOff => Luck is { } luck && Math.Abs(luck.LuckFraction) > 2 * luck.UsualLuckFraction;

    /// <summary>The foresight of a class.</summary>
    /// <param name="lessons">Its lessons, any order; may be empty.</param>
    /// <param name="fits">What was fitted for it before; none to fit everything anew. It changes how long this takes, not the answer.</param>
    /// <exception cref="ArgumentException">Lessons of more than one class, or one lesson twice.</exception>
    /// <remarks>
    /// A set is judged by a model that has seen only the lessons before it: one that had seen the set would expect what came, and leave no luck.
    /// So the first lesson gives no set, and a set at which the model would mostly assume gives none either.
    /// </remarks>
    public static ClassForesight Of(IReadOnlyList<LessonRecord> lessons, EarlierFits? fits = null)
    {
        fits ??= new();
        var unit = UnitEvidence.Of(lessons);
        var ordered = lessons.OrderBy(r => r.Lesson.Date).ToList();
        var before = new Dictionary<int, ClassChances>();
        var pupils = unit.Pupils
            .Select(p => (Pupil: p, Sets: p.Tasks.SelectMany(t => t.Sets).Where(s => s.PredictionErrorCount is not null).OrderBy(s => s.LessonNumber).ToList()))
            .Where(p => p.Sets.Count > 0)
            .ToList();
        var expected = pupils.Select(p => (IReadOnlyList<ExpectedSet>)p.Sets.Select(s => Expected(s)).OfType<ExpectedSet>().ToList()).ToList();
        var compared = pupils.SelectMany(p => p.Sets).ToList();
        var bias = PooledBias.Fit(expected);
        return new(
            PredictionScores.Of([.. compared.Select(s => new Forecast((double)s.PredictedSuccessCount!.Value / s.Trials.Count, s.Success.SuccessCount, s.Trials.Count))]),
            OptimismAndLuck.Of([.. expected.SelectMany(e => e)]),
            bias,
            [.. pupils.Select((p, i) => new PupilForesight(
                p.Pupil.PupilId, p.Pupil.Label, p.Sets.Count, bias.Pupils[i], [.. p.Sets.SelectMany(s => s.Success.EntryIds.Prepend(s.PredictionEntryId!.Value))]))],
            compared.Count - expected.Sum(e => e.Count));

        ExpectedSet? Expected(SetEvidence set)
        {
            if (set.LessonNumber == 1 || set.LevelId is not { } level) return null;
            if (!before.TryGetValue(set.LessonNumber, out var chances))
            {
                var now = ordered[set.LessonNumber - 1];
                chances = fits.Before([.. ordered.Take(set.LessonNumber - 1)], now);
                before.Add(set.LessonNumber, chances);
            }
            if (chances.Chance(set.PupilId, level, set.LessonNumber - 1) is not { } chance || chance.Logit.Cautions.HasFlag(ResponseCaution.MostlyAssumption)) return null;
            return new(set.PredictedSuccessCount!.Value, set.Success.SuccessCount, set.Trials.Count, Math.Clamp(chance.ChanceFraction, 1e-6, 1 - 1e-6));
        }
    }
}
