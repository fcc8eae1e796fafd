namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>Everything the engine says about one marked picture.</summary>
/// <param name="CentrePx">The centre of mass on the picture.</param>
/// <param name="FloorPx">The point on the floor's line straight below it.</param>
/// <param name="HeightH">How high the centre is above the floor, in statures.</param>
/// <param name="Scale">The picture's scale, and each segment beside the table.</param>
/// <param name="Tilt">Which way is down.</param>
/// <param name="Left">The end of the base on the left, once down is down.</param>
/// <param name="Right">The end on the right.</param>
/// <param name="HeldChanceFraction">The chance that the line of gravity is really between both ends.</param>
/// <param name="Extents">How far each contact reaches, in the order given.</param>
/// <param name="Shares">What each contact carries, in the order given; empty where the line of gravity is beyond an end.</param>
/// <param name="ClickSdH">The error of a click that was reckoned with, in statures.</param>
/// <param name="TableGapH">How far the line of gravity would move between the women's and the men's figures, in statures.</param>
/// <param name="Cautions">What to mind.</param>
public sealed record MarkedBalance(
    PointPx CentrePx, PointPx FloorPx, double HeightH, MarkedScale Scale, MarkedTilt Tilt, MarkedEnd Left, MarkedEnd Right,
    double HeldChanceFraction, IReadOnlyList<MarkedExtent> Extents, IReadOnlyList<MarkedShare> Shares, double ClickSdH, double TableGapH, IReadOnlyList<MarkedCaution> Cautions)
{
    /// <summary>The error of a click where nobody has measured it: 1 % of a stature, 1.4 cm of 1.40 m. Own estimate.</summary>
    public const double UsualClickSdH = .01;

    /// <summary>The end it would tip over first.</summary>
    public MarkedEnd Weakest => Left.MarginH <= Right.MarginH ? Left : Right;

    /// <summary>Distance of the line of gravity to the nearer end, in statures; less than 0 outside.</summary>
    public double MarginH => Weakest.MarginH;

    /// <summary>What can be said, the errors taken in.</summary>
    public MarkedVerdict Verdict => VerdictOf(HeldChanceFraction);

    /// <summary>The answer for one picture.</summary>
    /// <param name="picture">With nothing missing (<see cref="MarkedPicture.Needs"/>).</param>
    /// <param name="clickSdH">The error of a click in each direction as a standard deviation in statures, more than 0 and at most .1.</param>
    /// <param name="table">Whose mass fractions.</param>
    /// <returns>
    /// The centre and both ends are weighted sums of the clicks, so their errors are carried through exactly; the camera's tilt enters
    /// in proportion to the centre's height. What the body's own proportions add is not in it.
    /// </returns>
    /// <exception cref="ArgumentException">Something needed is not marked; a mark that is not finite; no segment with a length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A click's error outside its range.</exception>
    public static MarkedBalance Of(MarkedPicture picture, double clickSdH = UsualClickSdH, BodyTable table = BodyTable.Mean)
    {
        if (!(clickSdH is > 0 and <= .1)) throw new ArgumentOutOfRangeException(nameof(clickSdH), clickSdH, "A click is off by more than 0 and at most .1 statures.");
        if (picture.Needs() is { Count: > 0 } needs) throw new ArgumentException($"Not marked yet: {string.Join(", ", needs)}.", nameof(picture));
        if (!picture.Points.All(p => p.At.IsFinite) || !picture.Contacts.All(c => c.Ends.All(e => e.At.IsFinite)))
            throw new ArgumentException("Every mark has finite coordinates.", nameof(picture));
        return new MarkedReckoning(picture, clickSdH, table).Balance();
    }

    internal static MarkedVerdict VerdictOf(double heldChanceFraction) => heldChanceFraction switch
    {
        >= .975 => MarkedVerdict.Held,
        <= .025 => MarkedVerdict.NotHeld,
        _ => MarkedVerdict.TooClose,
    };
}
