using Slantwise.Engines.Statistics.Holds;
using Slantwise.Records.Checks;

namespace Slantwise.Host.Studies;

/// <summary>Times until something ended, or was stopped before it did, from a plain table.</summary>
/// <param name="Groups">Names of the groups in the order of the table; one without a name where there is no such column.</param>
/// <param name="Holds">The times by group.</param>
/// <param name="Notes">What was passed over.</param>
internal sealed record HoldStudy(IReadOnlyList<string> Groups, IReadOnlyList<IReadOnlyList<HoldTime>> Holds, IReadOnlyList<Finding> Notes)
{
    private static readonly StudyColumn[] Columns = [StudyColumn.Time, StudyColumn.Event, StudyColumn.Group, StudyColumn.Pupil];

    /// <summary>Reads a table with the columns time and event.</summary>
    public static async Task<HoldStudy> ReadAsync(string file, CancellationToken cancel)
    {
        var table = await StudyTable.ReadAsync(file, Columns, cancel);
        table.Need(StudyColumn.Time, StudyColumn.Event);
        var (groups, pupils, holds) = (new List<string>(), new Dictionary<string, int>(), new List<List<HoldTime>>());
        foreach (var row in table.Rows)
        {
            var time = table.Number(row, StudyColumn.Time, t => t > 0, StudyWords.Say("AllowedAboveZero"));
            var hasEnded = table.Tick(row, StudyColumn.Event);
            var group = table.Has(StudyColumn.Group) ? table.Named(row, StudyColumn.Group) : "";
            var pupil = table.Has(StudyColumn.Pupil) ? table.Named(row, StudyColumn.Pupil) : null;
            if (time is not { } held || hasEnded is not { } fallen || group is null) continue;
            if (pupil is not null) pupils.TryAdd(pupil, pupils.Count);
            if (!groups.Contains(group))
            {
                groups.Add(group);
                holds.Add([]);
            }
            holds[groups.IndexOf(group)].Add(new(held, fallen, pupil is null ? null : pupils[pupil]));
        }
        table.ThrowIfWrong();
        return new(groups, holds, [.. table.Notes()]);
    }
}
