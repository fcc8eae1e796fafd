using System.Globalization;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Records.Words;

namespace Slantwise.Records.Postures.Figures.Descriptions;

/// <summary>How a partner meets the first body.</summary>
internal static class DescribedJoins
{
    public static string Of(Partner partner, CultureInfo culture)
    {
        if (partner.Joins.All(j => IsBack(j.Own.Part) && IsBack(j.On.Part))) return PostureWords.Text("BackToBack", culture);
        var isGripped = partner.Joins.ToLookup(j => IsGrip(j.Own.Part) && IsGrip(j.On.Part));
        var phrases = new List<string>();
        if (isGripped[true].Any()) phrases.Add(PostureWords.Text(isGripped[true].Count() == 1 ? "HoldHand" : "HoldBothHands", culture));
        var meetings = isGripped[false].GroupBy(j => (j.Own.Part, j.On.Part)).Select(same => PostureWords.Text(Meeting(partner, same.Key.Item1), culture,
            DescribedParts.List([.. same.Select(j => j.Own)], culture), DescribedParts.List([.. same.Select(j => j.On)], culture))).ToArray();
        if (meetings.Length > 0) phrases.Add(PostureWords.Text("OfFirst", culture, DescribedParts.Enumerate(meetings, culture)));
        return string.Join("; ", phrases);
    }

    private static string Meeting(Partner partner, ContactPart own) => (partner.IsCarried, own) switch
    {
        (false, _) => "JoinAt",
        (_, ContactPart.Foot) => "JoinStand",
        (_, ContactPart.Seat) => "JoinSit",
        _ => "JoinOn",
    };

    private static bool IsGrip(ContactPart part) => part is ContactPart.Hand or ContactPart.Fingertips or ContactPart.Forearm;

    private static bool IsBack(ContactPart part) => part is ContactPart.UpperBack or ContactPart.LowerBack;
}
