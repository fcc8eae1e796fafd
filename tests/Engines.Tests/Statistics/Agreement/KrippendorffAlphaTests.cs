using CsCheck;
using Slantwise.Engines.Statistics.Agreement;

namespace Slantwise.Engines.Tests.Statistics.Agreement;

public sealed class KrippendorffAlphaTests
{
    // Source: [Krippendorff2011] example C: four judges, twelve things, some not rated.
    private static readonly double?[][] ExampleC =
    [
        [1, 2, 3, 3, 2, 1, 4, 1, 2, null, null, null],
        [1, 2, 3, 3, 2, 2, 4, 1, 2, 5, null, 3],
        [null, 3, 3, 3, 2, 3, 4, 2, 2, 5, 1, null],
        [1, 2, 3, 3, 2, 4, 4, 1, 2, 5, 1, null],
    ];

    // A second example that several programs carry: three judges, fifteen things.
    private static readonly double?[][] ThreeJudges =
    [
        [null, null, null, null, null, 3, 4, 1, 2, 1, 1, 3, 3, null, 3],
        [1, null, 2, 1, 3, 3, 4, 3, null, null, null, null, null, null, null],
        [null, null, 2, 1, 3, 4, 4, null, 2, 1, 1, 3, 3, null, 4],
    ];

    // Sources: [Krippendorff2011] prints .743 and .849, from memory also .815 and .797; [Gamer2019] kripp.alpha() of R's irr 0.84.1 for the digits.
    [Fact]
    public void Of_PublishedRatings_AgreesOnAllScales()
    {
        foreach (var row in GoldenTable.Rows("Agreement/krippendorff.csv"))
        {
            var alpha = KrippendorffAlpha.Of(Units(row["data"] == "krippendorff_C" ? ExampleC : ThreeJudges), Enum.Parse<RatingScale>(row["metric"], ignoreCase: true));
            Assert.Equal(row.Number("irr_kripp.alpha")!.Value, alpha.AlphaFraction!.Value, 1e-9);
            Assert.Equal(row.Count("n_pairable"), alpha.RatingCount);
        }
    }

    // Source: [Gwet2019] krippen2.table() of irrCAC, complete pairs: the nominal scale, and the interval one for quadratic weights.
    [Fact]
    public void Of_TablesOfR_AgreesForTwoJudges()
    {
        foreach (var row in GoldenTable.Rows("Agreement/tables.csv").Where(r => r["weights"] != "linear"))
        {
            var table = AgreementData.Known(row["table"]);
            if (table.PairCount > 500) continue;
            var units = AgreementData.Pairs(table).Select(p => (IReadOnlyList<double?>)[p.First, p.Second]).ToList();
            var alpha = KrippendorffAlpha.Of(units, row["weights"] == "identity" ? RatingScale.Nominal : RatingScale.Interval);
            if (row.Number("kripp_alpha") is { } expected) Assert.Equal(expected, alpha.AlphaFraction!.Value, 1e-9);
            else Assert.Null(alpha.AlphaFraction);
        }
    }

    [Fact]
    public void Of_DiagnosesOfFleiss_AgreesWithR()
    {
        // Source: [Gwet2019] krippen.alpha.dist() of irrCAC on the data of [Fleiss1971].
        var units = FleissKappaTests.Diagnoses.Things.Select(t => (IReadOnlyList<double?>)t.SelectMany((n, c) => Enumerable.Repeat((double?)c, n)).ToList()).ToList();
        Assert.Equal(.433409828, KrippendorffAlpha.Of(units, RatingScale.Nominal).AlphaFraction!.Value, 1e-9);
    }

    [Fact]
    public void Of_AnyRatings_AgreesWithTheCoincidenceTable() =>
        Gen.Select(Gen.Int[-1, 4].Select(r => r < 0 ? (double?)null : r).Array[0, 4].Array[1, 12], Gen.Int[1, 4]).Sample((units, which) =>
        {
            var scale = (RatingScale)which;
            var alpha = KrippendorffAlpha.Of(units, scale);
            // The plain second version: the table of coincidences, the expected one from its margins, differences by adding up.
            var o = new double[5, 5];
            foreach (var unit in units.Select(u => u.OfType<double>().ToList()).Where(u => u.Count > 1))
                for (var a = 0; a < unit.Count; a++)
                    for (var b = 0; b < unit.Count; b++)
                        if (a != b) o[(int)unit[a], (int)unit[b]] += 1.0 / (unit.Count - 1);
            var n = Enumerable.Range(0, 5).Select(c => Enumerable.Range(0, 5).Sum(k => o[c, k])).ToArray();
            double Difference(int c, int k) => c == k ? 0 : scale switch
            {
                RatingScale.Nominal => 1,
                RatingScale.Ordinal => Math.Pow(Enumerable.Range(Math.Min(c, k), Math.Abs(c - k) + 1).Sum(g => n[g]) - (n[c] + n[k]) / 2, 2),
                RatingScale.Interval => Math.Pow(c - k, 2),
                _ => Math.Pow((double)(c - k) / (c + k), 2),
            };
            double seen = 0, expected = 0;
            for (var c = 0; c < 5; c++)
                for (var k = 0; k < 5; k++)
                {
                    seen += o[c, k] * Difference(c, k);
                    expected += n[c] * n[k] * Difference(c, k) / (n.Sum() - 1);
                }
            Assert.Equal((int)Math.Round(n.Sum()), alpha.RatingCount);
            if (n.Count(x => x > 0) < 2)
            {
                Assert.Null(alpha.AlphaFraction);
                Assert.True((alpha.Cautions & (AgreementCautions.NoPairs | AgreementCautions.OneCategory)) != 0);
                return;
            }
            Assert.Equal(1 - seen / expected, alpha.AlphaFraction!.Value, 1e-9);
        });

    [Fact]
    public void Of_IntervalRatingsMovedAndStretched_StaysTheSame() =>
        Gen.Select(Gen.Int[-50, 50].Select(r => (double?)r / 8).Array[2, 3].Array[2, 8], Gen.Int[-5, 5], Gen.Int[1, 12]).Sample((units, move, quarters) =>
        {
            if (units.SelectMany(u => u).Distinct().Count() == 1) return;
            var moved = units.Select(u => (IReadOnlyList<double?>)u.Select(r => r * quarters / 4 + move).ToArray()).ToList();
            Assert.Equal(KrippendorffAlpha.Of(units, RatingScale.Interval).AlphaFraction!.Value, KrippendorffAlpha.Of(moved, RatingScale.Interval).AlphaFraction!.Value, 1e-9);
        });

    [Fact]
    public void Of_OutsideItsRange_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => KrippendorffAlpha.Of([[1, 2]], (RatingScale)7));
        Assert.Throws<ArgumentOutOfRangeException>(() => KrippendorffAlpha.Of([[1, double.NaN]], RatingScale.Interval));
        Assert.Throws<ArgumentOutOfRangeException>(() => KrippendorffAlpha.Of([[1, -1]], RatingScale.Ratio));
        Assert.Equal(0, KrippendorffAlpha.Of([[0, 0], [1, 0]], RatingScale.Ratio).AlphaFraction!.Value, 1e-12);
    }

    private static List<IReadOnlyList<double?>> Units(double?[][] judges) =>
        Enumerable.Range(0, judges[0].Length).Select(u => (IReadOnlyList<double?>)judges.Select(j => j[u]).ToArray()).ToList();
}
