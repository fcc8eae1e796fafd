using System.Globalization;
using System.Resources;
using Slantwise.Engines.Mechanics.Postures;

namespace Slantwise.Records.Postures;

/// <summary>What is wrong with a posture's file, as sentences: what, where, and what is allowed.</summary>
public static class PostureProblemWords
{
    /// <summary>The stature that centimetres are said for where nobody's age is given.</summary>
    public const double UsualCm = 140;

    private static readonly ResourceManager Texts = new(typeof(PostureProblemWords));

    /// <summary>A problem as a sentence.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="culture">The reader's language.</param>
    /// <param name="statureCm">For gaps in centimetres; of a median child, never of a pupil.</param>
    public static string Of(PostureProblem problem, CultureInfo culture, double statureCm = UsualCm) => problem.Kind == PostureProblemKind.CannotTouch
        ? string.Format(culture, Text($"{problem.Kind}", culture), Cm(problem.At, statureCm), Cm(problem.Allowed, statureCm), statureCm)
        : string.Format(culture, Text($"{problem.Kind}{(problem is { Kind: PostureProblemKind.Missing, Allowed: "" } ? "Alone" : "")}", culture), problem.At, problem.Allowed);

    private static double Cm(string statures, double statureCm) => statureCm * double.Parse(statures, CultureInfo.InvariantCulture);

    private static string Text(string key, CultureInfo culture) =>
        Texts.GetString(key, culture) ?? throw new InvalidOperationException($"No sentence for the posture problem '{key}'.");
}
