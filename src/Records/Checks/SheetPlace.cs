using System.Globalization;
using Slantwise.Records.Words;

namespace Slantwise.Records.Checks;

/// <summary>A place on a pupil's sheet: which task, set, trial.</summary>
/// <param name="TaskId">The task; none for the sheet as a whole.</param>
/// <param name="TaskName">The task's name as it is printed; none for the sheet as a whole.</param>
/// <param name="SetNumber">The set, from 1; none for the task as a whole.</param>
/// <param name="TrialNumber">The trial, from 1; none for the set as a whole.</param>
/// <param name="PupilLabel">The pupil's name or code, where the reader is not looking at one pupil; none otherwise.</param>
public sealed record SheetPlace(
    Guid? TaskId, string? TaskName, int? SetNumber = null, int? TrialNumber = null, string? PupilLabel = null) : IFormattable
{
    /// <summary>The place in words: "One-foot balance, set 2, trial 3".</summary>
    /// <param name="format">Not used.</param>
    /// <param name="formatProvider">The reader's culture; English where it is none.</param>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        var culture = formatProvider as CultureInfo ?? CultureInfo.InvariantCulture;
        List<string> parts = [];
        if (PupilLabel is not null) parts.Add(PupilLabel);
        if (TaskName is not null) parts.Add(TaskName);
        if (SetNumber is { } set) parts.Add(string.Format(culture, FindingWords.Text("PlaceSet", culture), set));
        if (TrialNumber is { } trial) parts.Add(string.Format(culture, FindingWords.Text("PlaceTrial", culture), trial));
        return parts.Count > 0 ? string.Join(", ", parts) : FindingWords.Text("PlaceSheet", culture);
    }

    /// <summary>The place in English words.</summary>
    public override string ToString() => ToString(null, CultureInfo.InvariantCulture);
}
