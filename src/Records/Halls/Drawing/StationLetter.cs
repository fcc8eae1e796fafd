namespace Slantwise.Records.Halls.Drawing;

/// <summary>What a station is called for short: mats have numbers, stations letters.</summary>
public static class StationLetter
{
    /// <summary>Its letter.</summary>
    /// <param name="station">From 1; none for no station.</param>
    /// <returns>A for the first; none for no station.</returns>
    public static string? Of(int? station) => station is >= 1 and <= 26 and var s ? ((char)('A' + s - 1)).ToString() : null;
}
