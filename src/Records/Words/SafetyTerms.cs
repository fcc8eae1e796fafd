using System.Globalization;
using System.Resources;
using Slantwise.Records.Schools;

namespace Slantwise.Records.Words;

/// <summary>What a policy is made of, in words.</summary>
public static class SafetyTerms
{
    private static readonly ResourceManager Texts = new(typeof(SafetyTerms));

    /// <summary>What has to be in place before weight on the head: "mats lie under and around".</summary>
    /// <param name="condition">Any condition.</param>
    /// <param name="culture">The reader's language.</param>
    /// <returns>A clause that begins with a small letter and ends without a stop.</returns>
    public static string Of(SafetyCondition condition, CultureInfo culture) => Text("Condition" + condition, culture);

    /// <summary>All that a policy asks for where weight on the head is planned, in one or two sentences.</summary>
    /// <param name="policy">One that allows it.</param>
    /// <param name="culture">The reader's language.</param>
    public static string HeadWeight(SafetyPolicy policy, CultureInfo culture) =>
        string.Format(culture, Text("HeadWeight", culture), string.Join("; ", policy.HeadConditions.Order().Select(c => Of(c, culture))), policy.HeadHoldCapS);

    private static string Text(string key, CultureInfo culture) =>
        Texts.GetString(key, culture) ?? throw new InvalidOperationException($"No words for '{key}' in the safety terms.");
}
