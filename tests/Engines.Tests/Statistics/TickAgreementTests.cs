using CsCheck;
using Slantwise.Engines.Statistics;

namespace Slantwise.Engines.Tests.Statistics;

public sealed class TickAgreementTests
{
    private static readonly Gen<TickAgreement> Tables = Gen
        .Select(Gen.Int[0, 40], Gen.Int[0, 40], Gen.Int[0, 40], Gen.Int[0, 40])
        .Select((a, b, c, d) => new TickAgreement(a, b, c, d));

    [Fact]
    public void Kappa_TwentyCuesByHand_IsFourNinths()
    {
        // By hand: agreement 15/20 = .75; by chance (15·12 + 5·8)/400 = .55; kappa (.75 − .55)/.45 = 4/9.
        var ticks = new TickAgreement(11, 4, 1, 4);
        Assert.Equal(0.75, ticks.AgreementFraction);
        Assert.Equal(4 / 9.0, ticks.KappaFraction!.Value, 1e-15);
        Assert.Equal(0.5, ticks.AdjustedKappaFraction);
        Assert.Equal(0.5, ticks.OverReportFraction);
        Assert.Equal(1 / 12.0, ticks.UnderReportFraction!.Value, 1e-15);
    }

    [Fact]
    public void Kappa_NearlyAllTicked_FallsThoughAgreementIsHigh()
    {
        // By hand: agreement 17/20 = .85; by chance (18·19 + 2·1)/400 = .86; kappa −.01/.14 = −1/14.
        var ticks = new TickAgreement(17, 1, 2, 0);
        Assert.Equal(-1 / 14.0, ticks.KappaFraction!.Value, 1e-15);
        Assert.Equal(0.7, ticks.AdjustedKappaFraction!.Value, 1e-15);
    }

    [Fact]
    public void Kappa_OneAnswerThroughout_IsNotDefined()
    {
        Assert.Null(new TickAgreement(25, 0, 0, 0).KappaFraction);
        Assert.Null(new TickAgreement(0, 0, 0, 25).KappaFraction);
        Assert.Equal(1, new TickAgreement(25, 0, 0, 0).AgreementFraction);
        Assert.Null(new TickAgreement(25, 0, 0, 0).OverReportFraction);
    }

    [Fact]
    public void Shares_OfNothing_AreNone()
    {
        var nothing = new TickAgreement();
        Assert.Null(nothing.AgreementFraction);
        Assert.Null(nothing.KappaFraction);
        Assert.Null(nothing.AdjustedKappaFraction);
        Assert.Null(nothing.OverReportFraction);
        Assert.Null(nothing.UnderReportFraction);
    }

    [Fact]
    public void Kappa_AnyTable_AgreesWithTheDefinition() => Tables.Sample(t =>
    {
        if (t.KappaFraction is not { } kappa) return;
        decimal n = t.ComparedCount;
        var agreed = (t.BothCount + t.NeitherCount) / n;
        var chance = ((t.BothCount + t.OnlyPupilCount) / n * ((t.BothCount + t.OnlyTeacherCount) / n))
            + ((t.NeitherCount + t.OnlyTeacherCount) / n * ((t.NeitherCount + t.OnlyPupilCount) / n));
        Assert.Equal((double)((agreed - chance) / (1 - chance)), kappa, 1e-12);
    });

    [Fact]
    public void Kappa_RolesSwapped_StaysTheSame() => Tables.Sample(t =>
    {
        Assert.Equal(t.KappaFraction, new TickAgreement(t.BothCount, t.OnlyTeacherCount, t.OnlyPupilCount, t.NeitherCount).KappaFraction);
        Assert.Equal(t.KappaFraction, new TickAgreement(t.NeitherCount, t.OnlyTeacherCount, t.OnlyPupilCount, t.BothCount).KappaFraction);
    });
}
