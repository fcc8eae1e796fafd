using System.Globalization;

namespace Slantwise.Records.Scans;

/// <summary>The meaning of a field of a printed sheet.</summary>
/// <param name="Kind">What it stands for.</param>
/// <param name="TaskNumber">The task, from 1 in the order of the sheet; 0 where no task is meant.</param>
/// <param name="SetNumber">The set, from 1; 0 where no set is meant. On the observation sheet the pupil's row, from 1.</param>
/// <param name="Number">Level, trial, cue or prediction, as the kind says; 0 where there is nothing to number.</param>
public readonly record struct SheetField(SheetFieldKind Kind, int TaskNumber = 0, int SetNumber = 0, int Number = 0)
{
    /// <summary>The meaning as a key of a layout: "Held-1-2-3".</summary>
    public string Key => string.Create(CultureInfo.InvariantCulture, $"{Kind}-{TaskNumber}-{SetNumber}-{Number}");

    /// <summary>Fields with the same group exclude each other, or are ticks on their own with an empty group.</summary>
    public string Group => Kind switch
    {
        SheetFieldKind.Held or SheetFieldKind.NotYet => string.Create(CultureInfo.InvariantCulture, $"Trial-{TaskNumber}-{SetNumber}-{Number}"),
        SheetFieldKind.TeacherMet or SheetFieldKind.TeacherNotMet => string.Create(CultureInfo.InvariantCulture, $"Teacher-{TaskNumber}-{SetNumber}-{Number}"),
        SheetFieldKind.Level or SheetFieldKind.Predicted or SheetFieldKind.Next or SheetFieldKind.TeacherSet => string.Create(CultureInfo.InvariantCulture, $"{Kind}-{TaskNumber}-{SetNumber}"),
        _ => "",
    };

    /// <summary>Reads a key back.</summary>
    /// <param name="key">Any text.</param>
    /// <returns>None for a text that <see cref="Key"/> never makes.</returns>
    public static SheetField? FromKey(string key)
    {
        var parts = key.Split('-');
        if (parts.Length != 4 || !Enum.TryParse<SheetFieldKind>(parts[0], out var kind)
            || !int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var task)
            || !int.TryParse(parts[2], NumberStyles.None, CultureInfo.InvariantCulture, out var set)
            || !int.TryParse(parts[3], NumberStyles.None, CultureInfo.InvariantCulture, out var number)) return null;
        var field = new SheetField(kind, task, set, number);
        return field.Key == key ? field : null;
    }
}
