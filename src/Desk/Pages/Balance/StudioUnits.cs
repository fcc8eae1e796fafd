using System.Globalization;
using Slantwise.Desk.Words;
using Slantwise.Engines.Mechanics;

namespace Slantwise.Desk.Pages.Balance;

/// <summary>In what lengths are said: fractions of a stature, or centimetres of an age's median child.</summary>
/// <param name="AgeYearCount">Whole years, 5 to 20; none for fractions of a stature.</param>
/// <param name="Sex">Whose growth table; none for the mean of both.</param>
public sealed record StudioUnits(int? AgeYearCount, Sex? Sex)
{
    /// <summary>The ages a teacher may choose.</summary>
    public static IReadOnlyList<int> Ages { get; } = [.. Enumerable.Range(5, 14)];

    /// <summary>The stature lengths are said for; none for fractions of it.</summary>
    public double? StatureCm => AgeYearCount is { } age ? StatureMedian.OfCm(age, Sex) : null;

    /// <summary>A length as a figure.</summary>
    /// <param name="lengthH">In statures.</param>
    public string Length(double lengthH) => StatureCm is { } cm
        ? StudioWords.Say("Centimetres", lengthH * cm)
        : StudioWords.Say("Statures", lengthH);

    /// <summary>A length as a bare figure, where a caption says the unit.</summary>
    /// <param name="lengthH">In statures.</param>
    public string Short(double lengthH) => StatureCm is null ? StudioWords.Say("ShortStatures", lengthH) : Length(lengthH);

    /// <summary>An area as a figure.</summary>
    /// <param name="areaH2">In square statures.</param>
    public string Area(double areaH2) => StatureCm is { } cm
        ? StudioWords.Say("AreaCentimetres", areaH2 * cm * cm)
        : StudioWords.Say("AreaStatures", areaH2);

    /// <summary>An angle as a figure.</summary>
    /// <param name="angleRad">In radians.</param>
    public static string Angle(double angleRad) => StudioWords.Say("Degrees", angleRad * 180 / Math.PI);

    /// <summary>A choice of the age's list.</summary>
    /// <param name="value">As in the list; empty for no age.</param>
    public StudioUnits WithAge(string? value) =>
        this with { AgeYearCount = int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var age) && Ages.Contains(age) ? age : null };

    /// <summary>A choice of the table's list.</summary>
    /// <param name="value">As in the list; empty for both.</param>
    public StudioUnits WithTable(string? value) => this with { Sex = Enum.TryParse<Sex>(value, out var sex) ? sex : null };
}
