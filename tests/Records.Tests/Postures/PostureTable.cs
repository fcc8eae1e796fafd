using System.Globalization;
using System.Text;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Records.Postures;

namespace Slantwise.Records.Tests.Postures;

/// <summary>The library's numbers as a table to read: lengths in statures, shares of the weight of all bodies together.</summary>
internal static class PostureTable
{
    private const int SampleCount = 1000;
    private const double ErrorDeg = 3;

    public static string Of(IReadOnlyList<Posture> postures)
    {
        var table = new StringBuilder();
        table.Append("posture                    centre  margin   tips  narrow   head  held  what carries (least and most by statics alone)\n");
        foreach (var group in postures.GroupBy(p => p.Group))
        {
            table.Append('\n').Append(group.Key.ToString().ToLowerInvariant()).Append('\n');
            foreach (var posture in group) table.Append(Row(posture)).Append('\n');
        }
        return table.Append(
            $"""

            centre   height of the centre of mass, of all bodies together
            margin   from the line of gravity to the nearest side of the base
            tips     how far it may tilt towards that side
            narrow   smallest width of the base over its longest side
            head     share of the weight on heads
            held     of {SampleCount} postures with joint errors of {ErrorDeg:0}° (standard deviation, seed 1) still on their base; one body only
            """.ReplaceLineEndings("\n")).Append('\n').ToString();
    }

    private static string Row(Posture posture)
    {
        var settled = posture.Settle();
        var balance = PostureBalance.Of(settled);
        var whole = balance.Whole;
        var tipsRad = whole.Margin.WeakestEdge < 0 ? 0 : whole.Margin.Edges[whole.Margin.WeakestEdge].TippingRad;
        return string.Create(CultureInfo.InvariantCulture,
            $"  {posture.Key,-25}{whole.Centre.ZH,6:0.000}{whole.Margin.MarginH,8:0.000}{tipsRad * 180 / Math.PI,6:0.0}°{whole.Base.NarrownessFraction,8:0.00}{Head(whole),7}{Held(posture, settled, whole),6}  {Shares(settled, whole)}{Others(balance)}");
    }

    private static string Head(BodyBalance whole) => whole.HeadFraction > 0 ? Percent(whole.HeadFraction) : "-";

    private static string Held(Posture posture, SettledPosture settled, BodyBalance whole) => posture.Partner is not null
        ? "-"
        : Percent(BalanceTolerance.Of(posture.Pose, settled.Body, whole, ErrorDeg, SampleCount).HeldFraction);

    private static string Shares(SettledPosture settled, BodyBalance whole)
    {
        var contacts = settled.Bodies.SelectMany((body, i) => body.Contacts.Select(c => (i == 0 ? "" : "partner's ") + Name(c.Contact))).ToArray();
        // No shares where a wall has to push: statics alone does not hold it.
        return whole.Loads.Shares.Count == 0
            ? string.Join(", ", contacts)
            : string.Join(", ", contacts.Zip(whole.Loads.Shares, (name, share) => $"{name} {Percent(share.ShareFraction)} ({Bounds(share)})"));
    }

    private static string Others(PostureBalance balance) => string.Create(CultureInfo.InvariantCulture, $"{Wall(balance)}{Carried(balance)}{Pull(balance)}");

    private static FormattableString Wall(PostureBalance balance) => balance.Wall is { } wall ? $"; wall pushes {wall.PushFraction:0.00} at {wall.HeightH:0.00}" : (FormattableString)$"";

    private static FormattableString Carried(PostureBalance balance) => balance.Carried is { } carried ? $"; carried with margin {carried.Margin.MarginH:0.000}" : (FormattableString)$"";

    private static FormattableString Pull(PostureBalance balance) => balance.Pull is { } pull ? $"; pull {pull.LeastFraction:0.00} to {pull.MostFraction:0.00} at {pull.HeightH:0.00}" : (FormattableString)$"";

    private static string Bounds(LoadShare share) => string.Create(CultureInfo.InvariantCulture, $"{100 * share.LeastFraction:0}-{100 * share.MostFraction:0}");

    private static string Percent(double fraction) => string.Create(CultureInfo.InvariantCulture, $"{100 * fraction:0}%");

    private static string Name(Contact contact)
    {
        var part = char.ToLowerInvariant(contact.Part.ToString()[0]) + contact.Part.ToString()[1..];
        return contact.Side == Side.Middle ? part : $"{part}.{contact.Side.ToString().ToLowerInvariant()}";
    }
}
