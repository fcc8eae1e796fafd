using System.Globalization;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Records.Postures.Figures.Descriptions;
using Slantwise.Records.Words;

namespace Slantwise.Records.Postures.Figures;

/// <summary>Says in words how a posture is held, from its angles and contacts: for screen readers and for cue cards.</summary>
/// <remarks>Rules of our own, in the order a teacher looks: what touches, how the trunk is, the legs, the arms, then the partner. What no rule is sure of is left out.</remarks>
public static class PostureDescription
{
    /// <summary>The description.</summary>
    /// <param name="settled">On the floor.</param>
    /// <param name="culture">The reader's language; English where there is no translation.</param>
    /// <returns>One sentence, a second one for a partner: "On both hands and the crown of the head; hips above the head; legs tucked."</returns>
    public static string Of(SettledPosture settled, CultureInfo culture)
    {
        var posture = settled.Posture;
        var first = new HeldBody(settled.Body, posture.Pose, posture.Contacts, []);
        var phrases = new List<string> { PostureWords.Text("On", culture, DescribedParts.List(posture.Contacts, culture)) };
        if (posture.Wall.Count > 0) phrases.Add(PostureWords.Text("Wall", culture, DescribedParts.List(posture.Wall, culture)));
        Shape(phrases, first, culture);
        var text = Sentence(phrases);
        return settled.Partner is { } body && posture.Partner is { } partner ? $"{text} {Second(body, partner, culture)}" : text;
    }

    private static string Second(SettledBody body, Partner partner, CultureInfo culture)
    {
        var phrases = new List<string>();
        if (!partner.IsCarried) phrases.Add(PostureWords.Text("On", culture, DescribedParts.List(partner.Contacts, culture)));
        phrases.Add(DescribedJoins.Of(partner, culture));
        Contact[] joined = [.. partner.Joins.Select(j => j.Own)];
        Shape(phrases, partner.IsCarried ? new HeldBody(body, partner.Pose, joined, []) : new HeldBody(body, partner.Pose, partner.Contacts, joined), culture);
        return Sentence([PostureWords.Text("Second", culture, string.Join("; ", phrases))]);
    }

    private static void Shape(List<string> phrases, HeldBody body, CultureInfo culture)
    {
        phrases.AddRange(DescribedTrunk.Of(body, culture));
        phrases.AddRange(DescribedLegs.Of(body, culture));
        phrases.AddRange(DescribedArms.Of(body, culture));
    }

    private static string Sentence(IReadOnlyList<string> phrases)
    {
        var text = string.Join("; ", phrases);
        return char.ToUpperInvariant(text[0]) + text[1..] + ".";
    }
}
