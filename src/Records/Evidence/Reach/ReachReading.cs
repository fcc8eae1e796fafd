using System.Globalization;
using Slantwise.Engines.Statistics.Reach;
using Slantwise.Records.Evidence.Orders;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;
using static Slantwise.Records.Words.ReachWords;

namespace Slantwise.Records.Evidence.Reach;

/// <summary>A reach in sentences, to the teacher alone: whom the levels include, questions about the rest, and what it rests on. No level is named for a pupil.</summary>
/// <param name="Headline">How many of the class, with its range.</param>
/// <param name="Notes">What else there is to say; pupils by label. Empty where the headline says it all.</param>
/// <param name="Grounds">The tries behind it and what would mislead.</param>
public sealed record ReachReading(string Headline, IReadOnlyList<ReachNote> Notes, string Grounds)
{
    /// <summary>The level that a note says would include more; none where none does.</summary>
    public Level? Added { get; private init; }

    /// <summary>Reads a reach.</summary>
    /// <param name="reach">The reach of one task.</param>
    /// <param name="task">The task it was found for.</param>
    /// <param name="band">The band it was found for.</param>
    /// <param name="culture">The reader's language.</param>
    public static ReachReading Of(TaskReach reach, SheetTask task, ReachBand band, CultureInfo culture)
    {
        var isAssumed = reach.TrialCount == 0;
        var standings = reach.Pupils.ToLookup(p => p.StandingIn(band), p => p.Label);
        // Before any try all pupils look alike: a name would say what nobody knows. What is not allowed is known.
        ReachStanding[] named = isAssumed
            ? [ReachStanding.NothingAllowed]
            : [ReachStanding.NothingAllowed, ReachStanding.AllTooHard, ReachStanding.AllCertain, ReachStanding.Open];
        var notes = named.Where(s => standings[s].Any())
            .Select(s => new ReachNote(Enum.Parse<ReachNoteKind>(s.ToString()), TextCount(s.ToString(), culture, standings[s].Count(), Listed(standings[s], culture))))
            .ToList();
        if (!isAssumed && Addition(reach, task, culture) is { } addition) notes.Add(new ReachNote(ReachNoteKind.Addition, addition));
        if (!isAssumed && reach.UnneededLevels is { Count: > 0 } unneeded && reach.Pupils.Count > 0)
            notes.Add(new ReachNote(ReachNoteKind.Unneeded, TextCount("Unneeded", culture, unneeded.Count, Listed(unneeded.Select(i => Numbered(i, task.Levels[i], culture)), culture))));
        if (!isAssumed)
            notes.AddRange(reach.Neighbours.Where(p => p.Standing is OrderStanding.Against or OrderStanding.PerhapsAgainst).Select(p => new ReachNote(ReachNoteKind.Order, Order(p, culture))));
        if (!isAssumed && reach.Pupils.Count(p => p.IsMostlyAssumed) is var assumed and > 0)
            notes.Add(new ReachNote(ReachNoteKind.Assumed, Text("Assumed", culture, assumed, reach.Pupils.Count)));
        return new ReachReading(HeadlineOf(reach, task, band, culture), notes, GroundsOf(reach, culture))
        {
            Added = !isAssumed && GainedCount(reach) > 0 ? reach.Addition!.Levels[0] : null,
        };
    }

    private static string HeadlineOf(TaskReach reach, SheetTask task, ReachBand band, CultureInfo culture)
    {
        if (reach.Pupils.Count == 0) return Text("NoPupils", culture);
        if (task.Levels.Count == 0) return Text("NoLevels", culture);
        var (least, most) = (reach.Whole.LeastCount, reach.Whole.MostCount);
        var range = least == most ? Text("RangeOne", culture, least) : Text("Range", culture, least, most);
        var band100 = Text("Band", culture, Math.Round(band.LowFraction * 100), Math.Round(band.HighFraction * 100));
        if (reach.TrialCount == 0) return Text("HeadlineAssumed", culture, reach.Pupils.Count, least, band100, most);
        // The expected number, not those who are more likely in than out: that one can lie outside its own range.
        var expected = Math.Clamp((int)Math.Round(reach.Whole.IncludedCount), least, most);
        var (named, missing) = (reach.LeftOut.Count, reach.Pupils.Count - expected);
        return Text("Headline", culture, expected, reach.Pupils.Count, range, band100)
            + (missing <= named ? "" : Text(named == 0 ? "OthersUnknown" : "MoreUnknown", culture));
    }

    // Which order is right is the teacher's to say: the range says how sure the other one is.
    private static string Order(OrderedPair pair, CultureInfo culture)
    {
        var (low, high) = TenthsOf(pair.LowOfEvenFraction!.Value, pair.HighOfEvenFraction!.Value);
        return Text("Order", culture, pair.HarderNumber, pair.EasierNumber, low, high) + (pair.Standing == OrderStanding.Against ? "" : Text("OrderChance", culture)) + Text("OrderAsk", culture);
    }

    private static (int Low, int High) TenthsOf(double low, double high) => ((int)Math.Floor(low * 10 + 1e-9), (int)Math.Ceiling(high * 10 - 1e-9));

    private static string? Addition(TaskReach reach, SheetTask task, CultureInfo culture)
    {
        if (reach.Addition is not { } addition) return null;
        var left = reach.LeftOut.Count;
        var gained = GainedCount(reach);
        if (addition.Levels is not [var level, ..] || gained == 0) return TextCount("AdditionNone", culture, addition.CandidateCount);
        var key = left == 1 ? "AdditionThis" : gained >= left ? "AdditionAll" : "AdditionSome";
        return Text(Question(level, task), culture) + " " + Text(key, culture, addition.CandidateCount, Named(level, culture), left, gained);
    }

    // Of those left out, how many the addition is expected to include; 0 where it is not worth a word.
    private static int GainedCount(TaskReach reach) => reach.Addition is { Levels.Count: > 0 } addition
        ? (int)Math.Round(addition.IncludedCount - reach.Pupils.Where(p => !p.IsLeftOut).Sum(p => p.Reach.IncludedFraction))
        : 0;

    private static string Question(Level added, SheetTask task)
    {
        var form = task.Levels.Where(l => l.Name == added.Name && l.Dose.Kind == added.Dose.Kind).Select(l => l.Dose.Amount).ToList();
        if (added.Dose.Kind != DoseKind.HoldS || form.Count == 0) return "QuestionLevel";
        return added.Dose.Amount < form.Min() ? "QuestionShorter" : added.Dose.Amount > form.Max() ? "QuestionLonger" : "QuestionLevel";
    }

    private static string GroundsOf(TaskReach reach, CultureInfo culture) => reach.TrialCount == 0
        ? Text("GroundsAssumed", culture)
        : Text("Grounds", culture, reach.TrialCount, reach.Pupils.Count(p => p.TrialCount > 0), reach.Pupils.Count);
}
