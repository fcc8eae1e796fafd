using CsCheck;
using Slantwise.Engines.Statistics.Holds;

namespace Slantwise.Engines.Tests.Statistics.Holds;

/// <summary>The holds several tests look at.</summary>
internal static class HoldData
{
    // Source: [Freireich1963], the 6-MP arm and the controls.
    public static IReadOnlyList<HoldTime> Treated { get; } = Gehan("6-MP");

    public static IReadOnlyList<HoldTime> Controls { get; } = Gehan("control");

    // Source: [Miller1997], the maintained arm and the other.
    public static IReadOnlyList<HoldTime> Maintained { get; } = Aml("Maintained");

    public static IReadOnlyList<HoldTime> NotMaintained { get; } = Aml("Nonmaintained");

    // Source: [NIST2012] section 8.4.1.3: twenty units, ten of them still running at 500 hours.
    public static IReadOnlyList<HoldTime> NistUnits { get; } =
    [
        .. new double[] { 54, 187, 216, 240, 244, 335, 361, 373, 375, 386 }.Select(t => new HoldTime(t, true)),
        .. Enumerable.Repeat(new HoldTime(500, false), 10),
    ];

    /// <summary>One to thirty holds of whole and half seconds, some fallen: ties of all kinds.</summary>
    public static Gen<HoldTime[]> Any { get; } =
        Gen.Select(Gen.Int[1, 24], Gen.Bool).Select((halves, fallen) => new HoldTime(halves / 2.0, fallen)).Array[1, 30];

    public static IReadOnlyList<HoldTime> Of(string data, string stratum) => (data, stratum) switch
    {
        ("gehan", "treat=6-MP") => Treated,
        ("gehan", "treat=control") => Controls,
        ("aml", "x=Maintained") => Maintained,
        ("aml", "x=Nonmaintained") => NotMaintained,
        _ => throw new ArgumentException($"{data} {stratum}"),
    };

    public static HoldSpan SpanOf(HoldTime hold) => new(hold.HeldS, hold.HasFallen ? hold.HeldS : null);

    private static HoldTime[] Gehan(string arm) =>
        GoldenTable.Rows("Holds/gehan.csv").Where(r => r["treat"] == arm).Select(r => new HoldTime(r.Count("time"), r.Count("cens") == 1)).ToArray();

    private static HoldTime[] Aml(string arm) =>
        GoldenTable.Rows("Holds/aml.csv").Where(r => r["x"] == arm).Select(r => new HoldTime(r.Count("time"), r.Count("status") == 1)).ToArray();
}
