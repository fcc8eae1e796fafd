using System.Globalization;
using Slantwise.Desk.Words;
using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.Growth;

namespace Slantwise.Desk.Pages.Evidence;

/// <summary>Moves between levels and predictions, short enough for a line.</summary>
public static class MoveText
{
    /// <summary>Who moved which way; ways nobody went are left out.</summary>
    public static string Short(LevelMoves moves) => moves.PupilCount == 0
        ? UnitWords.Say("NobodyMoves")
        : Listed(("MovedHarder", moves.HarderCount), ("MovedEasier", moves.EasierCount), ("MovedBoth", moves.BothCount), ("MovedNot", moves.StayedCount));

    /// <summary>What that rests on.</summary>
    public static string Count(LevelMoves moves) => UnitWords.SayCount("MovesOf", moves.PupilCount);

    /// <summary>Who looked at more than one level.</summary>
    public static string Explored(LevelMoves moves) => UnitWords.Say("Explored", moves.ExploredCount, moves.PupilCount);

    /// <summary>In how many sets more, as much or less came than predicted.</summary>
    public static string Short(PredictionSides sides) => sides.SetCount == 0
        ? EvidenceWords.Say("NothingCompared")
        : Listed(("SetsMet", sides.MetCount), ("SetsMore", sides.MoreCount), ("SetsFewer", sides.FewerCount));

    /// <summary>What that rests on.</summary>
    public static string Count(PredictionSides sides) => UnitWords.SayCount("SidesOf", sides.SetCount);

    /// <summary>How far predictions lie off, either way; empty where nothing was compared.</summary>
    public static string Off(PredictionEvidence predictions) => predictions switch
    {
        { Counts: { } counts } => UnitWords.Say("OffBy", Number(counts.MeanAbsoluteErrorCount), EvidenceWords.Say("UnitTries")),
        { Holds: { } holds } => UnitWords.Say("OffBy", Number(holds.MeanAbsoluteErrorS), EvidenceWords.Say("UnitSeconds")),
        _ => "",
    };

    /// <summary>Names in the order given.</summary>
    public static string Names(IEnumerable<string> names) => string.Join(", ", names);

    private static string Listed(params (string Key, int Count)[] parts) =>
        string.Join(", ", parts.Where(p => p.Count > 0).Select(p => UnitWords.Say(p.Key, p.Count)));

    private static string Number(double value) => value.ToString("0.0", CultureInfo.CurrentCulture);
}
