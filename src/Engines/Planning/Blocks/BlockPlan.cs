namespace Slantwise.Engines.Planning.Blocks;

/// <summary>The blocks of a lesson on a time line, their shares, and what becomes of them when talk overruns.</summary>
/// <param name="Blocks">In the order given.</param>
/// <param name="PlannedS">All blocks together.</param>
/// <param name="LeftS">What the lesson has beyond them; below 0 where they are too long.</param>
/// <param name="OverrunS">By how much talk overruns in all.</param>
/// <param name="ActivityS">Planned activity, waiting in it taken out.</param>
/// <param name="OverrunActivityS">Activity left when talk overruns: first what was left over goes, then the end of the activity; 0 or more, and scaled with its waiting.</param>
/// <param name="MostOverrunFraction">By what share of itself talk may overrun before activity falls below its orientation value, or before there is none left where none was given; none without talk; 0 where it lies below already.</param>
/// <param name="Shares">One a category with time or an orientation value, in the order of the categories.</param>
public sealed record BlockPlan(
    IReadOnlyList<PlacedBlock> Blocks, double PlannedS, double LeftS, double OverrunS, double ActivityS, double OverrunActivityS, double? MostOverrunFraction,
    IReadOnlyList<CategoryShare> Shares)
{
    /// <summary>Lays blocks along a lesson.</summary>
    /// <param name="blocks">1 or more, in order.</param>
    /// <param name="lessonS">The lesson, above 0, at most 4 hours.</param>
    /// <param name="talkOverrunFraction">By what share of itself every instruction block takes longer, 0 to 2: .2 makes 5 minutes 6.</param>
    /// <param name="orientation">Published values, at most one a category; may be empty.</param>
    /// <exception cref="ArgumentException">No block; two orientation values for one category.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A block or lesson not above 0 and at most 4 hours; a waiting share or an orientation value not of 0 to 1; an overrun not of 0 to 2.</exception>
    public static BlockPlan Of(IReadOnlyList<PlannedBlock> blocks, double lessonS, double talkOverrunFraction, IReadOnlyList<OrientationValue> orientation)
    {
        Check(blocks, lessonS, talkOverrunFraction, orientation);
        var placed = new List<PlacedBlock>();
        double atS = 0, lateS = 0;
        foreach (var block in blocks)
        {
            if (block.Category == TimeCategory.Instruction) lateS += block.PlannedS * talkOverrunFraction;
            placed.Add(new(block.Category, atS, atS + block.PlannedS, atS + block.PlannedS + lateS));
            atS += block.PlannedS;
        }

        var times = Enum.GetValues<TimeCategory>().ToDictionary(c => c, _ => 0.0);
        foreach (var block in blocks)
        {
            times[block.Category] += block.PlannedS * (1 - block.WaitingFraction);
            times[TimeCategory.Waiting] += block.PlannedS * block.WaitingFraction;
        }
        var inActivityS = blocks.Where(b => b.Category == TimeCategory.Activity).Sum(b => b.PlannedS);
        var (leftS, talkS, activityS) = (lessonS - atS, times[TimeCategory.Instruction], times[TimeCategory.Activity]);
        // What is cut of an activity block is activity and the waiting in it alike.
        var keptShare = inActivityS == 0 ? 1 : Math.Clamp(1 - Math.Max(0, lateS - Math.Max(0, leftS)) / inActivityS, 0, 1);

        var shares = new List<CategoryShare>();
        var inBlocksS = blocks.Where(b => b.Category == TimeCategory.Activity).Sum(b => b.PlannedS * b.WaitingFraction);
        foreach (var (category, timeS) in times)
        {
            OrientationValue? value = orientation.Any(o => o.Category == category) ? orientation.First(o => o.Category == category) : null;
            if (timeS == 0 && value is null) continue;
            var overrunS = category switch
            {
                TimeCategory.Instruction => timeS + lateS,
                TimeCategory.Activity => timeS * keptShare,
                TimeCategory.Waiting => timeS - inBlocksS * (1 - keptShare),
                _ => timeS,
            };
            var share = timeS / atS;
            shares.Add(new(category, timeS, share, overrunS / Math.Max(lessonS, atS), value, value is { } v && (share < v.LowFraction - 1e-9 || share > v.HighFraction + 1e-9)));
        }
        var floor = orientation.Where(o => o.Category == TimeCategory.Activity).Select(o => o.LowFraction).FirstOrDefault();
        return new(placed, atS, leftS, lateS, activityS, activityS * keptShare, Most(talkS, activityS, inActivityS, leftS, floor * lessonS), shares);
    }

    // Activity kept is activity · (1 − (f · talk − left) / inActivity); it meets the floor at this f.
    private static double? Most(double talkS, double activityS, double inActivityS, double leftS, double floorS)
    {
        if (talkS == 0) return null;
        if (activityS <= floorS) return 0;
        return (Math.Max(0, leftS) + inActivityS * (1 - floorS / activityS)) / talkS;
    }

    private static void Check(IReadOnlyList<PlannedBlock> blocks, double lessonS, double talkOverrunFraction, IReadOnlyList<OrientationValue> orientation)
    {
        const double mostS = 4 * 3600;
        if (blocks.Count == 0) throw new ArgumentException("A lesson has 1 block or more.", nameof(blocks));
        if (orientation.Select(o => o.Category).Distinct().Count() != orientation.Count)
            throw new ArgumentException("A category has at most one orientation value.", nameof(orientation));
        if (!(lessonS is > 0 and <= mostS)) throw new ArgumentOutOfRangeException(nameof(lessonS), lessonS, "A lesson takes more than 0 seconds and at most 4 hours.");
        if (!(talkOverrunFraction is >= 0 and <= 2)) throw new ArgumentOutOfRangeException(nameof(talkOverrunFraction), talkOverrunFraction, "Talk overruns by 0 to 2 times itself.");
        foreach (var block in blocks)
        {
            if (!(block.PlannedS is > 0 and <= mostS)) throw new ArgumentOutOfRangeException(nameof(blocks), block.PlannedS, "A block takes more than 0 seconds and at most 4 hours.");
            if (!(block.WaitingFraction is >= 0 and <= 1) || !Enum.IsDefined(block.Category))
                throw new ArgumentOutOfRangeException(nameof(blocks), block, "A block has a category and a waiting share of 0 to 1.");
        }
        foreach (var value in orientation)
        {
            if (!(value.LowFraction >= 0 && value.LowFraction <= value.HighFraction && value.HighFraction <= 1))
                throw new ArgumentOutOfRangeException(nameof(orientation), value, "An orientation value lies within 0 to 1.");
        }
    }
}
