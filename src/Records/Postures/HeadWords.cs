using System.Globalization;
using System.Resources;

namespace Slantwise.Records.Postures;

/// <summary>What is said wherever weight is on the head: the share, what was measured on adults, and the usual cautions. Never safe or unsafe.</summary>
/// <remarks>Sources: [Hector2015], [Chen2017].</remarks>
public static class HeadWords
{
    private static readonly ResourceManager Texts = new(typeof(HeadWords));

    /// <summary>The share in words.</summary>
    /// <param name="headFraction">Share of the body's weight on the head, more than 0 and at most 1.</param>
    /// <param name="culture">The reader's language.</param>
    public static string Share(double headFraction, CultureInfo culture) => string.Format(culture, Text("Share", culture), headFraction);

    /// <summary>What was measured on adults, and that nothing is known of children.</summary>
    /// <param name="culture">The reader's language.</param>
    public static string Published(CultureInfo culture) => Text("Published", culture);

    /// <summary>The usual cautions, one sentence each.</summary>
    /// <param name="culture">The reader's language.</param>
    public static IReadOnlyList<string> Cautions(CultureInfo culture) =>
        [.. new[] { "CautionMat", "CautionHands", "CautionStop", "CautionChoice", "CautionRules" }.Select(key => Text(key, culture))];

    /// <summary>That a policy does not allow it on a sheet.</summary>
    /// <param name="culture">The reader's language.</param>
    public static string NotAllowed(CultureInfo culture) => Text("NotAllowed", culture);

    /// <summary>The default policy's answer, where no school is known.</summary>
    /// <param name="culture">The reader's language.</param>
    public static string NotAllowedByDefault(CultureInfo culture) => Text("NotAllowedByDefault", culture);

    private static string Text(string key, CultureInfo culture) =>
        Texts.GetString(key, culture) ?? throw new InvalidOperationException($"No sentence for '{key}' in the head words.");
}
