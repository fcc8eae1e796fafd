using Slantwise.Records.Sheets;

namespace Slantwise.Records.Evidence;

/// <summary>One list of tasks, levels and cues for the sheets of several lessons, so that a number means one thing throughout.</summary>
internal static class SheetMerge
{
    /// <summary>The tasks of all sheets, each with all its levels and cues.</summary>
    /// <param name="sheets">The tasks of each lesson's sheet, earliest lesson first.</param>
    /// <returns>In the order of the latest sheet; what only earlier sheets hold stands after what it followed there.</returns>
    public static IReadOnlyList<SheetTask> Of(IReadOnlyList<IReadOnlyList<SheetTask>> sheets)
    {
        var latestFirst = sheets.Reverse().ToList();
        return Ordered(latestFirst.Select(tasks => tasks.Select(t => t.TaskId)))
            .Select(taskId => Merged(latestFirst.SelectMany(tasks => tasks.Where(t => t.TaskId == taskId)).ToList()))
            .ToList();
    }

    private static SheetTask Merged(IReadOnlyList<SheetTask> latestFirst)
    {
        var levels = latestFirst.SelectMany(t => t.Levels).DistinctBy(l => l.Id).ToDictionary(l => l.Id);
        return latestFirst[0] with
        {
            Levels = Ordered(latestFirst.Select(t => t.Levels.Select(l => l.Id))).Select(id => levels[id]).ToList(),
            Cues = Ordered(latestFirst.Select(t => t.Cues)),
        };
    }

    private static List<T> Ordered<T>(IEnumerable<IEnumerable<T>> latestFirst)
    {
        var merged = new List<T>();
        foreach (var items in latestFirst)
        {
            var after = -1;
            foreach (var item in items)
            {
                var at = merged.IndexOf(item);
                if (at < 0) merged.Insert(at = after + 1, item);
                after = at;
            }
        }
        return merged;
    }
}
