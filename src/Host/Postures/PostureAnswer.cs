using System.Globalization;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Host.Words;
using Slantwise.Records.Postures;

namespace Slantwise.Host.Postures;

/// <summary>What the engine says of a posture, as lines and as JSON.</summary>
internal sealed class PostureAnswer
{
    private const double ErrorDeg = MechanicalOrder.ErrorDeg;

    private readonly Posture _posture;
    private readonly PostureStature _stature;
    private readonly SettledPosture _settled;
    private readonly PostureBalance _balance;
    private readonly BalanceTolerance? _tolerance;

    public PostureAnswer(Posture posture, PostureStature stature)
    {
        (_posture, _stature) = (posture, stature);
        _settled = posture.Settle();
        _balance = PostureBalance.Of(_settled);
        // Two bodies correct each other's errors in ways that are not computed.
        _tolerance = posture.Partner is null ? BalanceTolerance.Of(posture.Pose, _settled.Body, _balance.Whole, ErrorDeg) : null;
    }

    private static CultureInfo Spoken => CultureInfo.CurrentUICulture;

    private BodyBalance Whole => _balance.Whole;

    private double? PendulumS => _stature.Cm is { } cm ? PendulumTime.OfS(Whole.Centre.ZH, cm / 100) : null;

    public string Words => string.Join('\n', Lines().Where(line => line.Length > 0));

    public object Json => new
    {
        key = _posture.Key,
        group = _posture.Group,
        verdict = BalanceWords.Verdict(_settled, _balance, Spoken, _stature.Cm),
        isHeld = _balance.IsHeld,
        isInverted = _settled.IsInverted,
        demands = PostureDemands.Of(_posture),
        gapH = _settled.GapH,
        centre = Whole.Centre is var c ? new { c.XH, c.YH, c.ZH } : null,
        @base = new
        {
            corners = Whole.Base.Corners.Select(Place),
            areaH2 = Whole.Base.AreaH2,
            narrownessFraction = Whole.Base.NarrownessFraction,
        },
        margin = new
        {
            marginH = Whole.Margin.MarginH,
            marginCm = Whole.Margin.MarginH * _stature.Cm,
            weakestEdge = Whole.Margin.WeakestEdge,
            weakest = BalanceWords.Weakest(_settled, _balance, Spoken),
            edges = Whole.Margin.Edges.Select(e => new
            {
                from = Place(e.From), to = Place(e.To), e.MarginH, e.TippingRad, tippingDeg = Degrees(e.TippingRad), e.EnergyToTipH, e.IsPropped,
            }),
        },
        loads = new
        {
            basis = Whole.Loads.Basis,
            shares = Whole.Loads.Shares.Zip(_settled.Bodies.SelectMany(b => b.Contacts), (share, contact) => new
            {
                part = contact.Contact.Part, side = contact.Contact.Side, at = Place(contact.Middle),
                share.ShareFraction, share.LeastFraction, share.MostFraction,
            }),
        },
        headFraction = Whole.HeadFraction,
        tolerance = _tolerance is { } t ? new { t.HeldFraction, t.ErrorDeg, t.SampleCount } : null,
        roomForErrorCount = _tolerance is { } room ? RoomForError.Of(Whole, room.Spread).RoomCount : (double?)null,
        pendulumTimeS = PendulumS,
        wall = _balance.Wall is { } wall ? new { pushFraction = Finite(wall.PushFraction), wall.HeightH } : null,
        pull = _balance.Pull is { } pull ? new { pull.IsHeld, gentlestFraction = Finite(pull.GentlestFraction), pull.HeightH } : null,
        carried = _balance.Carried is { } carried ? new { carried.IsHeld, carried.Margin.MarginH } : null,
        stature = _stature.Cm is { } cm ? new { cm, ageYearCount = _stature.AgeYearCount, sex = _stature.Sex, source = "CDC 2000, P50" } : null,
        segments = "de Leva 1996, mean of the female and the male column; adults",
    };

    private IEnumerable<string> Lines()
    {
        yield return BalanceWords.Verdict(_settled, _balance, Spoken, _stature.Cm);
        yield return BalanceWords.Help(_balance, Spoken);
        yield return MarginLine();
        foreach (var edge in Tipping()) yield return edge;
        yield return BalanceWords.Shape(_settled, _balance, Spoken);
        foreach (var share in BalanceWords.Shares(_settled, _balance, Spoken)) yield return "  " + share;
        yield return BalanceWords.Basis(Whole.Loads.Basis, Spoken);
        if (_tolerance is { } tolerance) yield return BalanceWords.Tolerance(tolerance, Spoken);
        if (PendulumS is { } seconds) yield return HostWords.Say("PosturePendulum", seconds);
        foreach (var line in Head()) yield return line;
        yield return HostWords.Say("PostureSource");
        if (_stature is { Cm: { } cm, AgeYearCount: { } age }) yield return HostWords.Say("PostureStature", cm, age);
    }

    private string MarginLine() => _stature.Cm is { } cm
        ? HostWords.Say("PostureMarginCm", Whole.Margin.MarginH * cm, Whole.Margin.MarginH)
        : HostWords.Say("PostureMargin", Whole.Margin.MarginH);

    private IEnumerable<string> Tipping()
    {
        if (Whole.Margin.WeakestEdge < 0 || !Whole.Margin.IsHeld) yield break;
        var weakest = Whole.Margin.Edges[Whole.Margin.WeakestEdge];
        var free = Whole.Margin.Edges.Where(e => !e.IsPropped).ToList();
        yield return HostWords.Say("PostureTipping", Degrees(weakest.TippingRad), Degrees(free.Max(e => e.TippingRad)), 100 * weakest.EnergyToTipH);
    }

    private IEnumerable<string> Head()
    {
        if (!_posture.HasHeadWeight) yield break;
        yield return HeadWords.NotAllowedByDefault(Spoken);
        if (Whole.HeadFraction > 0) yield return HeadWords.Share(Whole.HeadFraction, Spoken);
        yield return HeadWords.Published(Spoken);
        foreach (var caution in HeadWords.Cautions(Spoken)) yield return "  " + caution;
    }

    private static object Place(Point2 point) => new { point.XH, point.YH };

    private static double Degrees(double rad) => rad * 180 / Math.PI;

    private static double? Finite(double fraction) => double.IsFinite(fraction) ? fraction : null;
}
