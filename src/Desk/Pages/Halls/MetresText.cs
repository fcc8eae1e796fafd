using System.Globalization;

namespace Slantwise.Desk.Pages.Halls;

/// <summary>Metres as they are typed and shown, with a point or a comma.</summary>
public static class MetresText
{
    /// <summary>Reads what was typed.</summary>
    /// <param name="text">What was typed.</param>
    /// <returns>None for what is no number.</returns>
    public static double? Read(string? text) =>
        double.TryParse(text?.Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var metres) && double.IsFinite(metres)
            ? metres : null;

    /// <summary>Metres to show in a field: to the centimetre, no more digits than needed.</summary>
    /// <param name="metres">Metres.</param>
    public static string Of(double metres) => metres.ToString("0.##", CultureInfo.CurrentCulture);
}
