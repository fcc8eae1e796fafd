using System.Globalization;

namespace Slantwise.Desk.Pages.Results;

/// <summary>The place of one cell on a pupil's sheet.</summary>
/// <param name="TaskNumber">The task, from 1 in the order of the sheet.</param>
/// <param name="SetNumber">The set, from 1.</param>
/// <param name="Kind">The column.</param>
/// <param name="TrialNumber">The trial, from 1; 0 for any other column.</param>
public readonly record struct GridCell(int TaskNumber, int SetNumber, CellKind Kind, int TrialNumber = 0)
{
    /// <summary>The cell as a short text that a page can carry: "1.2.Trial.3".</summary>
    public string Key => string.Create(CultureInfo.InvariantCulture, $"{TaskNumber}.{SetNumber}.{Kind}.{TrialNumber}");

    /// <summary>Reads a key back.</summary>
    /// <param name="key">Any text.</param>
    /// <returns>None for a text that <see cref="Key"/> never makes.</returns>
    public static GridCell? FromKey(string? key)
    {
        var parts = (key ?? "").Split('.');
        if (parts.Length != 4
            || !int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var task)
            || !int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var set)
            || !Enum.TryParse<CellKind>(parts[2], out var kind) || !Enum.IsDefined(kind)
            || !int.TryParse(parts[3], NumberStyles.None, CultureInfo.InvariantCulture, out var trial)) return null;
        var cell = new GridCell(task, set, kind, trial);
        return cell.Key == key ? cell : null;
    }
}
