using System.Globalization;
using System.Resources;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;

namespace Slantwise.Records.Postures;

/// <summary>The answers of the balance engine as sentences, for every page and command that gives them.</summary>
/// <remarks>Lengths are said in hundredths of a stature, or in centimetres where a stature is given. Never a verdict on safety or on a pupil.</remarks>
public static partial class BalanceWords
{
    private static readonly ResourceManager Texts = new(typeof(BalanceWords));

    /// <summary>Whether it can be held still, how much room there is, and over what it would tip first.</summary>
    /// <param name="settled">On the floor.</param>
    /// <param name="balance">Its balance.</param>
    /// <param name="culture">The reader's language.</param>
    /// <param name="statureCm">To say centimetres; none for hundredths of a stature.</param>
    public static string Verdict(SettledPosture settled, PostureBalance balance, CultureInfo culture, double? statureCm = null)
    {
        if (balance.Carried is { IsHeld: false }) return Text("CarriedNotHeld", culture);
        if (balance is { Pull.IsHeld: false, Whole.Margin.IsHeld: true }) return Text("PullNotHeld", culture);
        return Verdict(balance.Whole, Contacts(settled), Trunk(settled), culture, statureCm);
    }

    /// <summary>The same for contacts and a balance that come from elsewhere: a marked photo.</summary>
    /// <param name="balance">The balance.</param>
    /// <param name="contacts">What touches the floor, 1 or more.</param>
    /// <param name="trunk">The middle of the performer's trunk; none where it is not known.</param>
    /// <param name="culture">The reader's language.</param>
    /// <param name="statureCm">To say centimetres; none for hundredths of a stature.</param>
    public static string Verdict(BodyBalance balance, IReadOnlyList<SettledContact> contacts, SegmentFrame? trunk, CultureInfo culture, double? statureCm = null)
    {
        var margin = balance.Margin;
        if (margin.Edges.Count == 0) return Text("OnAPoint", culture);
        if (margin.Edges.Count == 1) return Text("OnALine", culture);
        var over = Over(balance, contacts, trunk, culture);
        return margin.IsHeld
            ? Sentence("Held", culture, Text($"Room{Room(margin.MarginH)}", culture), over)
            : Sentence("NotHeld", culture, Length(-margin.MarginH, culture, statureCm), over);
    }

    /// <summary>What it would tip over first: "the fingertips", "the left foot, to the left".</summary>
    /// <param name="settled">On the floor.</param>
    /// <param name="balance">Its balance.</param>
    /// <param name="culture">The reader's language.</param>
    /// <returns>Empty for a base without sides.</returns>
    public static string Weakest(SettledPosture settled, PostureBalance balance, CultureInfo culture) =>
        Over(balance.Whole, Contacts(settled), Trunk(settled), culture);

    /// <summary>A side of the base in words, article included.</summary>
    /// <param name="side">The side.</param>
    /// <param name="culture">The reader's language.</param>
    public static string Side(BalanceSide side, CultureInfo culture)
    {
        // Limbs before trunk and head, whichever way round the side runs.
        var (first, second) = side.First.Part <= side.Second.Part ? (side.First, side.Second) : (side.Second, side.First);
        if (first.Part != second.Part) return Sentence("Between", culture, Named(Key(first), culture), Named(Key(second), culture));
        var pair = first.Side == second.Side ? first.Side : (Side?)null;
        var key = $"{first.Part}{side.End}{pair?.ToString() ?? "Both"}";
        if (side.End != PrintEnd.Side && Texts.GetString(key, culture) is { } end) return end.Replace('|', ' ');
        var part = Named(pair is null ? $"{first.Part}Both" : Key(first), culture);
        return side.Towards is { } towards ? Sentence("Looking", culture, part, Towards(towards, side.IsInverted, culture)) : part;
    }

    /// <summary>A direction as the performer has it: "to the front", "on the belly side" upside down.</summary>
    /// <param name="towards">The direction.</param>
    /// <param name="isInverted">Whether the performer is upside down.</param>
    /// <param name="culture">The reader's language.</param>
    public static string Towards(BodyDirection towards, bool isInverted, CultureInfo culture) =>
        Text(isInverted && towards is (BodyDirection.Front or BodyDirection.Back) ? $"Inverted{towards}" : $"Towards{towards}", culture);

    /// <summary>What touches: "left hand", without an article.</summary>
    /// <param name="contact">The part.</param>
    /// <param name="culture">The reader's language.</param>
    public static string Contact(Contact contact, CultureInfo culture) => Text(Key(contact), culture).Split('|')[^1];

    /// <summary>A length: "3 hundredths of a stature" or "4 cm".</summary>
    /// <param name="lengthH">In statures, 0 or more.</param>
    /// <param name="culture">The reader's language.</param>
    /// <param name="statureCm">To say centimetres; none for hundredths of a stature.</param>
    public static string Length(double lengthH, CultureInfo culture, double? statureCm = null)
    {
        var amountCount = Math.Round(lengthH * (statureCm ?? 100), MidpointRounding.AwayFromZero);
        var unit = statureCm is null ? "Hundredth" : "Centimetre";
        return amountCount < 1
            ? Text($"LessThanOne{unit}", culture)
            : Sentence(amountCount == 1 ? $"One{unit}" : $"Many{unit}s", culture, amountCount);
    }

    /// <summary>How much room a margin is, from nothing to plenty. Own steps: about 1, 4 and 10 cm of a child of 1.40 m.</summary>
    /// <param name="marginH">The margin in statures, 0 or more.</param>
    public static BalanceRoom Room(double marginH) => marginH switch
    {
        < .0075 => BalanceRoom.Hardly,
        < .030 => BalanceRoom.Little,
        < .075 => BalanceRoom.Some,
        _ => BalanceRoom.Plenty,
    };

    internal static SettledContact[] Contacts(SettledPosture settled) => [.. settled.Bodies.SelectMany(b => b.Contacts)];

    internal static SegmentFrame Trunk(SettledPosture settled) => settled.Body.Skeleton.Frame(SegmentKind.MiddleTrunk, Engines.Mechanics.Side.Middle);

    private static string Over(BodyBalance balance, IReadOnlyList<SettledContact> contacts, SegmentFrame? trunk, CultureInfo culture) =>
        balance.Margin.WeakestEdge < 0 ? "" : Side(BalanceSide.Of(balance.Margin.Edges[balance.Margin.WeakestEdge], contacts, trunk), culture);

    private static string Key(Contact contact) => contact.Side == Engines.Mechanics.Side.Middle ? $"{contact.Part}" : $"{contact.Part}{contact.Side}";

    private static string Named(string key, CultureInfo culture) => Text(key, culture).Replace('|', ' ');

    private static string Sentence(string key, CultureInfo culture, params object[] arguments) => string.Format(culture, Text(key, culture), arguments);

    private static string Text(string key, CultureInfo culture) =>
        Texts.GetString(key, culture) ?? throw new InvalidOperationException($"No sentence for '{key}' in the balance words.");
}
