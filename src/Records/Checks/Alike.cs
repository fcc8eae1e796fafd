using Slantwise.Records.Tasks;

namespace Slantwise.Records.Checks;

/// <summary>When two things would look the same to a pupil.</summary>
internal static class Alike
{
    /// <summary>A text with runs of white space as one space, trimmed, in capitals: what is left when case and spacing do not count.</summary>
    public static string Folded(string? text) =>
        string.Join(' ', (text ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).ToUpperInvariant();

    public static bool Texts(string? one, string? other) => Folded(one) == Folded(other);

    public static bool Levels(Level one, Level other) =>
        Texts(one.Name, other.Name) && one.Dose == other.Dose && one.Demands.ToHashSet().SetEquals(other.Demands) && one.Posture == other.Posture;
}
