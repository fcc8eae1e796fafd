using System.Globalization;
using Slantwise.Desk.Words;
using Slantwise.Engines.Drawing.Charts;
using Slantwise.Engines.Statistics;
using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.Shortlist;
using Slantwise.Records.Tasks;
using Slantwise.Records.Words;

namespace Slantwise.Desk.Pages.Evidence;

/// <summary>Numbers of evidence as words: what they say first, then n, then the range.</summary>
public static class EvidenceText
{
    /// <summary>Below this many sets a mean error of predictions is shown muted.</summary>
    public const int EnoughSetCount = 3;

    /// <summary>Successes of n.</summary>
    public static string Count(SuccessShare share) =>
        share.TrialCount == 0 ? EvidenceWords.Say("NoTries") : EvidenceWords.SayCount("OfTries", share.TrialCount, share.SuccessCount);

    /// <summary>What the successes can say: a range in tenths, or that there are not enough tries yet. Empty without a try.</summary>
    public static string Range(SuccessShare share)
    {
        if (share is not { LowFraction: { } low, HighFraction: { } high }) return "";
        if (!share.HasEnoughTrials) return EvidenceWords.Say("NotEnoughTries");
        var (from, to) = DotsOfTen.TenthsOf(low, high);
        return EvidenceWords.Say("LikelyTenths", from, to);
    }

    /// <summary>Whether a share is too small to read.</summary>
    public static bool IsMuted(SuccessShare share) => !share.HasEnoughTrials;

    /// <summary>A dose with its unit.</summary>
    public static string Of(Dose dose) => ResultsWords.Say("Dose" + dose.Kind, dose.Amount);

    /// <summary>A level by number, way and dose.</summary>
    public static string Of(LevelEvidence level) => level switch
    {
        { LevelId: null } => EvidenceWords.Say("LevelNotWritten"),
        { LevelNumber: { } number, Dose: { } dose } => EvidenceWords.Say("LevelNamed", number, level.Name, Of(dose)),
        _ => EvidenceWords.Say("LevelOffSheet"),
    };

    /// <summary>The levels chosen set by set: "2, 2, 3". A set without a level is a question mark.</summary>
    public static string Path(IEnumerable<SetEvidence> sets) =>
        string.Join(" → ", sets.Select(set => set.LevelNumber?.ToString(CultureInfo.CurrentCulture) ?? "?"));

    /// <summary>A best hold.</summary>
    public static string Of(BestHold best) => EvidenceWords.Say(
        best.IsLowerBound ? "HeldAtLeast" : "Held", best.HeldS.ToString("0.#", CultureInfo.CurrentCulture));

    /// <summary>Predictions against what came, the direction first; none where nothing could be compared.</summary>
    public static string? Of(PredictionEvidence predictions) => predictions switch
    {
        { Counts: { } counts } => EvidenceWords.SayCount(
            "Predicted" + counts.Direction, counts.SetCount, Signed(counts.MeanErrorCount), EvidenceWords.Say("UnitTries")),
        { Holds: { } holds } => EvidenceWords.SayCount(
            "Predicted" + holds.Direction, holds.SetCount, Signed(holds.MeanErrorS), EvidenceWords.Say("UnitSeconds")),
        _ => null,
    };

    /// <summary>Whether predictions were compared in too few sets to read.</summary>
    public static bool IsMuted(PredictionEvidence predictions) =>
        (predictions.Counts?.SetCount ?? predictions.Holds?.SetCount ?? 0) < EnoughSetCount;

    /// <summary>A pattern of decision with how often it came.</summary>
    public static string Of(PatternCount pattern) =>
        EvidenceWords.Say("PatternTimes", QuestionWords.Text("Pattern" + pattern.Pattern, CultureInfo.CurrentUICulture), pattern.SetCount);

    /// <summary>A band of success in words.</summary>
    public static string Of(SuccessBand band) => EvidenceWords.Say("After" + band);

    /// <summary>A set's tries as the sheet shows them: filled where the dose was reached, open where not; seconds where they were timed.</summary>
    public static string Tries(SetEvidence set) => string.Join(" ", set.Trials.Select(trial => (trial.IsSuccess ? "●" : "○")
        + (trial.HeldS is { } heldS ? $" {heldS.ToString("0.#", CultureInfo.CurrentCulture)} s" : "")));

    /// <summary>How much is known of a pupil on the short list, and how long ago the last talk was.</summary>
    public static string Known(ShortlistedTalk talk) => ReadingWords.SayCount("WhyTries", talk.TrialCount) + "; " + talk.LessonsSinceTalk switch
    {
        null => ReadingWords.SayCount("WhyNoTalk", talk.LessonCount),
        0 => ReadingWords.Say("WhyTalkNow"),
        { } since => ReadingWords.SayCount("WhyTalk", since),
    };

    private static string Signed(double error) => error.ToString("+0.0;−0.0;0.0", CultureInfo.CurrentCulture);
}
