using System.Globalization;
using Slantwise.Desk.Words;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Records.Postures;

namespace Slantwise.Desk.Pages.Balance;

/// <summary>What two postures do differently, in figures and in words. It says which is which, never which is better.</summary>
public sealed class PostureComparison
{
    // Less than a tenth is not worth a sentence, less than a twentieth is about the same.
    private const double SameFraction = .05, SentenceFraction = .10;
    private const double ToleranceDeg = 3;

    private readonly CultureInfo _culture;
    private readonly List<ComparisonRow> _rows = [];

    private PostureComparison(CultureInfo culture) => _culture = culture;

    /// <summary>Row by row: what, of A, of B, and the difference in words.</summary>
    public IReadOnlyList<ComparisonRow> Rows => _rows;

    /// <summary>The differences that are worth a sentence, in the order of the rows.</summary>
    public IReadOnlyList<string> Sentences => [.. _rows.Where(r => r.IsDifferent).Select(r => r.Difference)];

    /// <summary>Compares two postures on the floor.</summary>
    /// <param name="a">The first.</param>
    /// <param name="b">The second.</param>
    /// <param name="units">In what lengths are said.</param>
    /// <param name="culture">The reader's language.</param>
    public static PostureComparison Of(SettledPosture a, SettledPosture b, StudioUnits units, CultureInfo culture)
    {
        var comparison = new PostureComparison(culture);
        var (first, second) = (PostureBalance.Of(a), PostureBalance.Of(b));
        comparison.AddHeld(first.IsHeld, second.IsHeld);
        comparison.AddBase(first.Whole.Base, second.Whole.Base, units);
        comparison.AddMargins(first, second, units);
        comparison.AddFirst(BalanceWords.Weakest(a, first, culture), BalanceWords.Weakest(b, second, culture));
        comparison.AddShare("RowHands", Hands(a, first), Hands(b, second));
        if (a.Posture.HasHeadWeight || b.Posture.HasHeadWeight) comparison.AddShare("RowHead", first.Whole.HeadFraction, second.Whole.HeadFraction);
        if (a.Partner is null && b.Partner is null) comparison.AddTolerance(Tolerance(a, first), Tolerance(b, second));
        return comparison;
    }

    private void AddHeld(bool isAHeld, bool isBHeld) => Add(
        "RowHeld", Text(isAHeld ? "Yes" : "No"), Text(isBHeld ? "Yes" : "No"),
        Text(isAHeld == isBHeld ? isAHeld ? "BothHeld" : "NeitherHeld" : isAHeld ? "OnlyAHeld" : "OnlyBHeld"), isAHeld != isBHeld);

    private void AddBase(BaseOfSupport a, BaseOfSupport b, StudioUnits units)
    {
        var (longA, longB) = (LongestH(a), LongestH(b));
        AddRatio("RowLength", units.Length(longA), units.Length(longB), longA, longB, "RatioLength");
        AddRatio("RowBase", units.Area(a.AreaH2), units.Area(b.AreaH2), a.AreaH2, b.AreaH2, "RatioBase");
        var (narrowA, narrowB) = (a.NarrownessFraction, b.NarrownessFraction);
        var isDifferent = Math.Abs(narrowA - narrowB) > SameFraction * Math.Max(narrowA, narrowB);
        Add("Narrowness", Text("NarrownessFigure", narrowA), Text("NarrownessFigure", narrowB),
            Text(!isDifferent ? "Same" : narrowB > narrowA ? "Broader" : "Narrower"), isDifferent);
    }

    private void AddMargins(PostureBalance a, PostureBalance b, StudioUnits units)
    {
        var (marginA, marginB) = (a.Whole.Margin, b.Whole.Margin);
        AddRatio("Margin", units.Length(marginA.MarginH), units.Length(marginB.MarginH), marginA.MarginH, marginB.MarginH, "RatioMargin");
        if (marginA.WeakestEdge >= 0 && marginB.WeakestEdge >= 0)
        {
            var (edgeA, edgeB) = (marginA.Edges[marginA.WeakestEdge], marginB.Edges[marginB.WeakestEdge]);
            AddRatio("Tipping", Tipping(edgeA), Tipping(edgeB), edgeA.TippingRad, edgeB.TippingRad, "RatioTipping");
            AddRatio("Energy", units.Length(edgeA.EnergyToTipH), units.Length(edgeB.EnergyToTipH), edgeA.EnergyToTipH, edgeB.EnergyToTipH, "RatioEnergy");
        }
        AddRatio("Height", units.Length(a.Whole.Centre.ZH), units.Length(b.Whole.Centre.ZH), a.Whole.Centre.ZH, b.Whole.Centre.ZH, "RatioHeight");
    }

    private void AddFirst(string a, string b) => Add("RowFirst", a, b, Text(a == b ? "FirstSame" : "FirstOther"), a != b);

    private void AddShare(string what, double? a, double? b)
    {
        if (a is not { } first || b is not { } second)
        {
            Add(what, a is { } onlyA ? Text("Percent", onlyA) : "–", b is { } onlyB ? Text("Percent", onlyB) : "–", "", false);
            return;
        }
        var points = Math.Round(100 * (second - first));
        Add(what, Text("Percent", first), Text("Percent", second), points == 0 ? Text("Same") : Text(points > 0 ? "WeightMore" : "WeightLess", Math.Abs(points)), false);
    }

    private void AddTolerance(BalanceTolerance a, BalanceTolerance b)
    {
        var points = Math.Round(100 * b.HeldFraction) - Math.Round(100 * a.HeldFraction);
        Add("ToleranceTitle", Text("ToleranceFigure", Math.Round(100 * a.HeldFraction)), Text("ToleranceFigure", Math.Round(100 * b.HeldFraction)),
            points == 0 ? Text("Same") : Text(points > 0 ? "ErrorsMore" : "ErrorsLess", Math.Abs(points)), Math.Abs(points) >= 2);
    }

    // How many times B is of A; nothing where one of them is on the wrong side of 0.
    private void AddRatio(string what, string saidA, string saidB, double a, double b, string sentence)
    {
        if (a <= 0 || b <= 0)
        {
            Add(what, saidA, saidB, "", false);
            return;
        }
        var ratioFraction = b / a;
        var by = Math.Abs(Math.Log(ratioFraction));
        Add(what, saidA, saidB, by > SameFraction ? Text(sentence, RatioWords.Of(ratioFraction, _culture)) : Text("Same"), by > SentenceFraction);
    }

    private static string Tipping(TippingEdge edge) => edge.MarginH < 0 ? StudioWords.Say("TippedAlready") : StudioUnits.Angle(edge.TippingRad);

    private static double LongestH(BaseOfSupport baseOfSupport)
    {
        var corners = baseOfSupport.Corners;
        return corners.SelectMany((a, i) => corners.Skip(i + 1).Select(b => (a - b).LengthH)).DefaultIfEmpty(0).Max();
    }

    private static double? Hands(SettledPosture settled, PostureBalance balance)
    {
        var shares = balance.Whole.Loads.Shares;
        return shares.Count == 0
            ? null
            : settled.Bodies.SelectMany(b => b.Contacts).Zip(shares)
                .Where(c => ContactPatch.Of(c.First.Contact.Part).Segment is SegmentKind.Hand or SegmentKind.Forearm).Sum(c => c.Second.ShareFraction);
    }

    private static BalanceTolerance Tolerance(SettledPosture settled, PostureBalance balance) =>
        BalanceTolerance.Of(settled.Posture.Pose, settled.Body, balance.Whole, ToleranceDeg);

    private void Add(string what, string a, string b, string difference, bool isDifferent) =>
        _rows.Add(new ComparisonRow(Text(what), a, b, difference, isDifferent));

    private string Text(string key, params object?[] arguments) => StudioWords.Text(key, _culture, arguments);
}
