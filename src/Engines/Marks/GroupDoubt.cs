namespace Slantwise.Engines.Marks;

/// <summary>Of fields that exclude each other one is marked. Where several seem to be, one of them may be rubbed out or touched by its neighbour's mark.</summary>
internal static class GroupDoubt
{
    /// <summary>The readings, with every mark of a group in doubt that has more than one.</summary>
    public static FieldReading[] Of(SheetLayout layout, FieldReading[] readings)
    {
        foreach (var group in Enumerable.Range(0, readings.Length).Where(i => layout.Fields[i].Group.Length > 0).GroupBy(i => layout.Fields[i].Group))
        {
            var marked = group.Where(i => readings[i].Verdict == MarkVerdict.Marked).ToList();
            if (marked.Count < 2) continue;
            foreach (var i in marked) readings[i] = readings[i] with { Verdict = MarkVerdict.Doubtful };
        }
        return readings;
    }
}
