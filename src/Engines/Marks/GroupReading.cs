namespace Slantwise.Engines.Marks;

/// <summary>
/// What fields that exclude each other say about one another. Where one is marked and another may be, too, and that is in doubt, so is the first: one of them
/// may be rubbed out or touched by its neighbour's mark. Ink around an empty field is the other's mark, where there is one, and a faint stroke in it was not meant. Of two that are marked beyond doubt
/// both stay: what two marks mean is not decided here.
/// </summary>
internal static class GroupReading
{
    private const double LeastFraction = .3;

    public static FieldReading[] Of(SheetLayout layout, IReadOnlyList<MarkTraits> traits, FieldReading[] readings)
    {
        foreach (var group in Enumerable.Range(0, readings.Length).Where(i => layout.Fields[i].Group.Length > 0).GroupBy(i => layout.Fields[i].Group))
        {
            var isDoubtful = group.Any(i => readings[i] is { Verdict: MarkVerdict.Doubtful, MarkedFraction: >= LeastFraction });
            var marked = group.Count(i => readings[i].Verdict == MarkVerdict.Marked);
            foreach (var i in group)
            {
                if (isDoubtful && marked == 1 && readings[i].Verdict == MarkVerdict.Marked) readings[i] = readings[i] with { Verdict = MarkVerdict.Doubtful };
                else if (marked > 0 && !isDoubtful && MarkModel.IsEmptyBesideAMark(traits[i], readings[i])) readings[i] = readings[i] with { Verdict = MarkVerdict.Empty };
            }
        }
        return readings;
    }
}
