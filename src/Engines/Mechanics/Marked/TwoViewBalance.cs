using MathNet.Numerics.Distributions;

namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>What two pictures at right angles say together.</summary>
/// <param name="Boxes">The contacts that both pictures show, as rectangles; empty where some contact is in one picture only.</param>
/// <param name="Base">Their hull; none where some contact is in one picture only.</param>
/// <param name="Margin">The margin over that base; none without it.</param>
/// <param name="MarginH">The margin, or without a base the smaller one of both pictures, in statures.</param>
/// <param name="MarginSdH">How far it may be off, as a standard deviation.</param>
/// <param name="HeldChanceFraction">The chance that the line of gravity is inside on every side, or a little less.</param>
/// <param name="Loads">What each box carries; none without a base.</param>
/// <param name="HeightGapH">By how much both pictures differ about the height of the centre: over .05 one does not show the limbs' lengths, or they are not of one moment.</param>
public sealed record TwoViewBalance(
    IReadOnlyList<MarkedBox> Boxes, BaseOfSupport? Base, BalanceMargin? Margin, double MarginH, double MarginSdH,
    double HeldChanceFraction, LoadShares? Loads, double HeightGapH)
{
    /// <summary>What can be said, the errors taken in.</summary>
    public MarkedVerdict Verdict => MarkedBalance.VerdictOf(HeldChanceFraction);

    /// <summary>Whether both pictures agree about the height of the centre.</summary>
    public bool IsSameHeight => HeightGapH <= .05;

    /// <summary>The answer of two pictures of one moment.</summary>
    /// <param name="first">The first picture, most often from the side.</param>
    /// <param name="second">The second, from a camera at right angles, most often from the front.</param>
    /// <param name="isFromRight">Whether the second camera stands where the right of the first picture is.</param>
    /// <returns>
    /// On the floor as seen from above, X along the first picture to its right, Y away from its camera. Contacts are matched by part
    /// and side; one mark for both sides stands for either. A part turned out of both views fills less than its rectangle. A body that
    /// points towards a camera looks short, so that everything else looks long: both pictures are brought to the smaller height.
    /// </returns>
    public static TwoViewBalance Of(MarkedBalance first, MarkedBalance second, bool isFromRight)
    {
        var gapH = Math.Abs(first.HeightH - second.HeightH);
        (first, second) = (ToHeight(first, second.HeightH), ToHeight(second, first.HeightH));
        var boxes = Matched(first.Extents, second.Extents, isFromRight);
        if (boxes.Count == 0)
        {
            var nearer = first.MarginH <= second.MarginH ? first : second;
            return new TwoViewBalance(
                [], null, null, nearer.MarginH, nearer.Weakest.MarginSdH, first.HeldChanceFraction * second.HeldChanceFraction, null, gapH);
        }

        var baseOfSupport = BaseOfSupport.Of(boxes.SelectMany(b => b.Corners).ToArray());
        var margin = BalanceMargin.Of(new Point3(0, 0, Math.Max(1e-9, (first.HeightH + second.HeightH) / 2)), baseOfSupport);
        var sdsH = margin.Edges.Select(edge => SdH(edge, first, second, isFromRight)).ToArray();
        var outsideFraction = margin.Edges.Count < 3 ? 1 : margin.Edges.Zip(sdsH, (edge, sdH) => Normal.CDF(0, sdH, -edge.MarginH)).Sum();
        var loads = LoadShares.Of(boxes.Select(b => b.Middle).ToArray(), new(0, 0));
        if (loads.Basis == LoadBasis.NotHeld) loads = LoadShares.OfPrints(boxes.Select(b => b.Corners).ToArray(), new(0, 0));
        return new TwoViewBalance(
            boxes, baseOfSupport, margin, margin.MarginH, margin.WeakestEdge < 0 ? first.Weakest.MarginSdH : sdsH[margin.WeakestEdge],
            Math.Max(0, 1 - outsideFraction), loads, gapH);
    }

    private static MarkedBalance ToHeight(MarkedBalance view, double heightH)
    {
        if (!(heightH > 0 && view.HeightH > heightH)) return view;
        var factor = heightH / view.HeightH;
        MarkedEnd Scaled(MarkedEnd end) => end with { MarginH = factor * end.MarginH, MarginSdH = factor * end.MarginSdH };
        return view with
        {
            HeightH = heightH,
            Left = Scaled(view.Left),
            Right = Scaled(view.Right),
            Extents = [.. view.Extents.Select(e => e with { FirstH = factor * e.FirstH, LastH = factor * e.LastH })],
        };
    }

    private static IReadOnlyList<MarkedBox> Matched(IReadOnlyList<MarkedExtent> first, IReadOnlyList<MarkedExtent> second, bool isFromRight)
    {
        var boxes = new List<MarkedBox>();
        foreach (var along in first)
            foreach (var across in second)
                if (IsSame(along, across)) boxes.Add(Box(along, across, isFromRight));
        return first.All(a => second.Any(b => IsSame(a, b))) && second.All(b => first.Any(a => IsSame(a, b))) ? boxes : [];
    }

    private static bool IsSame(MarkedExtent a, MarkedExtent b) =>
        a.Part == b.Part && (a.Side == b.Side || a.Side == Side.Middle || b.Side == Side.Middle);

    private static MarkedBox Box(MarkedExtent along, MarkedExtent across, bool isFromRight)
    {
        var (nearH, farH) = isFromRight ? (across.FirstH, across.LastH) : (-across.LastH, -across.FirstH);
        return new MarkedBox(along.Part, along.Side == Side.Middle ? across.Side : along.Side, new(along.FirstH, nearH), new(along.LastH, farH));
    }

    // A slanting side errs with the ends of both views, each as far as the side faces it.
    private static double SdH(TippingEdge edge, MarkedBalance first, MarkedBalance second, bool isFromRight)
    {
        var along = edge.To - edge.From;
        var outwards = 1 / along.LengthH * new Point2(along.YH, -along.XH);
        var ofFirstH = (outwards.XH > 0 ? first.Right : first.Left).MarginSdH;
        var ofSecondH = (outwards.YH > 0 == isFromRight ? second.Right : second.Left).MarginSdH;
        return Math.Sqrt(outwards.XH * outwards.XH * ofFirstH * ofFirstH + outwards.YH * outwards.YH * ofSecondH * ofSecondH);
    }
}
