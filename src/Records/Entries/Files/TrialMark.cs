using System.Globalization;
using Slantwise.Records.Checks;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Entries.Files;

/// <summary>A trial as a table writes it: <c>1</c>, <c>0</c>, <c>4.2s</c>, <c>1/4.2s</c>, <c>-</c>.</summary>
internal readonly record struct TrialMark(bool? IsSuccess, double? HeldS)
{
    public bool IsTried => IsSuccess is not null || HeldS is not null;

    /// <summary>Reads a mark.</summary>
    /// <returns>False for a text that is none.</returns>
    public static bool TryRead(ReadOnlySpan<char> text, out TrialMark mark)
    {
        mark = default;
        if (text is "-") return true;
        bool? isSuccess = null;
        var slash = text.IndexOf('/');
        if (slash >= 0 || text is "0" or "1")
        {
            var tick = slash >= 0 ? text[..slash] : text;
            if (tick is not ("0" or "1")) return false;
            isSuccess = tick is "1";
            if (slash < 0)
            {
                mark = new(isSuccess, null);
                return true;
            }
            text = text[(slash + 1)..];
        }
        if (!TryReadSeconds(text, out var heldS)) return false;
        mark = new(isSuccess, heldS);
        return true;
    }

    /// <summary>Reads seconds with their unit: <c>4.2s</c> or <c>4,2s</c>.</summary>
    public static bool TryReadSeconds(ReadOnlySpan<char> text, out double heldS)
    {
        heldS = 0;
        if (text.Length < 2 || text[^1] is not ('s' or 'S')) return false;
        return double.TryParse(
            text[..^1].ToString().Replace(',', '.'),
            NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign | NumberStyles.AllowExponent,
            CultureInfo.InvariantCulture,
            out heldS);
    }

    /// <summary>Writes a trial as short as can be read back: the time alone where it says the same as the tick.</summary>
    /// <param name="level">The chosen level; none where nobody chose.</param>
    public static string Of(Trial trial, Level? level)
    {
        var tick = trial.IsSuccess ? "1" : "0";
        if (trial.HeldS is not { } heldS) return tick;
        return level is { Dose.Kind: DoseKind.HoldS } && FactCheck.IsHold(heldS) && PupilSetCheck.Reached(heldS, level.Dose) == trial.IsSuccess
            ? Seconds(heldS)
            : $"{tick}/{Seconds(heldS)}";
    }

    public static string Seconds(double heldS) => heldS.ToString("R", CultureInfo.InvariantCulture) + "s";
}
