using System.Globalization;
using Slantwise.Records.Lessons;
using Slantwise.Records.Postures;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Designs;

namespace Slantwise.Records.Safety;

/// <summary>What is proposed to be done about a task's risks. Common practice, no source, unless a line names one.</summary>
internal static class RiskControls
{
    /// <summary>The proposals, the most needed first: where there are more than a page keeps, the last are left out.</summary>
    public static IReadOnlyList<string> Of(Known known, CultureInfo culture)
    {
        string Say(string key, params object[] gaps) => RiskWords.Text(key, culture, gaps);
        var (reasons, design) = (known.Reasons, known.Design);
        List<string> all = [];
        if (design is { Space: var space })
            all.Add(space.Source == ClearSpace.CommonPractice ? Say("ControlSpace", space.SpaceM) : Say("ControlSpaceSource", space.SpaceM, space.Source));
        if (design is { Mats: var mats }) all.Add(MatLine(mats, known.Record, culture));
        all.AddRange(reasons.Where(r => r is not RiskReason.HeadWeight).Select(r => Say("Control" + r)));
        if (known.BeforeNames.Count > 0) all.Add(Before(known.BeforeNames, culture));
        if (design?.Mats.MatCount > 0 && reasons.Count > 0) all.Add(Say("ControlOneAtATime"));
        if (known.Offered.Count > 1) all.Add(Say("ControlShown"));
        return [.. all.Take(RiskCheck.MostControls)];
    }

    /// <summary>What the policy asks for a task, and how much it removes.</summary>
    public static IEnumerable<string> PolicyLines(SheetTask task, IReadOnlyList<Level> offered, IReadOnlyList<RiskReason> reasons, SafetyPolicy policy, CultureInfo culture)
    {
        var removed = task.Levels.Count - offered.Count;
        if (removed > 0) yield return RiskWords.TextCount("PolicyRemoves", culture, removed, task.Levels.Count);
        if (reasons.Contains(RiskReason.HeadWeight))
        {
            foreach (var condition in policy.HeadConditions) yield return RiskWords.Text("Condition" + condition, culture);
            yield return RiskWords.Text("HeadHoldCap", culture, policy.HeadHoldCapS);
        }
        var isHeld = offered.SelectMany(PostureDemands.Of).Contains(BodyDemand.Spotting);
        if (isHeld || reasons.Any(r => r is RiskReason.HeadWeight or RiskReason.Inversion or RiskReason.Height))
            yield return RiskWords.Text("Spotting" + policy.Spotting, culture);
    }

    // At most so many at work at a time as the mats allow; said only where that is fewer than there are pupils.
    private static string MatLine(MatNeed mats, LessonRecord record, CultureInfo culture)
    {
        if (mats.MatCount == 0) return RiskWords.Text("ControlNoMats", culture);
        var line = RiskWords.TextCount("ControlMats" + mats.Per, culture, mats.MatCount);
        if (record.Lesson.MatCount is not > 0) return line;
        var there = record.Lesson.MatCount.Value;
        var atOnce = there / mats.MatCount * (mats.Per == MatShare.Pair ? 2 : 1);
        return atOnce < record.Pupils.Count ? line + RiskWords.TextCount("ControlMatsAtOnce", culture, there, atOnce) : line;
    }

    // Names may be long, and a line the teacher can edit has an end.
    private static string Before(IReadOnlyList<string> names, CultureInfo culture)
    {
        for (var count = names.Count; count > 0; count--)
        {
            var line = RiskWords.Text("ControlBefore", culture, string.Join(", ", names.Take(count)));
            if (line.Length <= RiskCheck.LineLength) return line;
        }
        return RiskWords.Text("ControlBeforeUnnamed", culture);
    }

    /// <summary>What a proposal is made from.</summary>
    /// <param name="Reasons">What asks for more than the usual care.</param>
    /// <param name="Offered">The levels offered.</param>
    /// <param name="Design">The task's design; none where it has none.</param>
    /// <param name="Record">The lesson.</param>
    /// <param name="BeforeNames">The tasks that are better learned before it.</param>
    internal sealed record Known(
        IReadOnlyList<RiskReason> Reasons, IReadOnlyList<Level> Offered, TaskDesign? Design, LessonRecord Record, IReadOnlyList<string> BeforeNames);
}
