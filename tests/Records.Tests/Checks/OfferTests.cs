using CsCheck;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;
using static Slantwise.Records.Tests.Entries.InventedLesson;

namespace Slantwise.Records.Tests.Checks;

public sealed class OfferTests
{
    private static readonly DateOnly Day = new(2026, 3, 2);
    private static readonly BodyDemand[] All = Enum.GetValues<BodyDemand>();

    private static readonly Gen<SafetyPolicy> Policies =
        Gen.Select(Gen.Enum<PolicyChoice>().Array[4], Gen.Enum<SafetyCondition>().Array[0, 2], Gen.Int[1, 6], (choices, conditions, capS) => new SafetyPolicy
        {
            HeadWeight = choices[0], Inversion = choices[1], Rolls = choices[2], Spotting = choices[3], HeadConditions = conditions, HeadHoldCapS = capS,
        });

    private static readonly Gen<Level> Levels = Gen.Select(Gen.Int[100, 999], Gen.OneOf(All).Array[0, 3], Gen.Int[1, 9], (id, demands, amount) =>
        new Level { Id = Id(id), Name = "way " + id, Dose = new(amount < 7 ? DoseKind.HoldS : DoseKind.RepetitionsCount, amount), Demands = demands });

    private static readonly Gen<Restriction> Restrictions = Gen.Select(Gen.OneOf(All), Gen.Int[-3, 3], Gen.Int[-3, 3], Gen.Bool.Array[3], (without, since, until, has) => new Restriction
    {
        SchoolId = SchoolId, Id = Id(5), PupilId = Alba.Id, Without = without, Since = has[0] ? Day.AddDays(since) : null, Until = has[1] ? Day.AddDays(until) : null,
        IsLiftedByHand = has[2],
    });

    [Fact]
    public void InOwnOrder_AnyRestrictions_CountsTheOfferFirstAndLosesNothing() =>
        Gen.Select(Levels.List[0, 6], Policies, Restrictions.List[0, 4]).Sample((drawn, policy, restrictions) =>
        {
            var levels = drawn.DistinctBy(l => l.Id).ToList();
            var content = new SheetContent { Title = "x", Tasks = [new SheetTask { TaskId = Id(1), Name = "x", Levels = levels }] };
            var own = Offer.InOwnOrder(content, policy, restrictions, Day).Tasks[0].Levels;
            var offered = Offer.LevelsFor(levels, policy, restrictions, Day);
            Assert.Equal(offered, own.Take(offered.Count));
            Assert.Equal(levels.Select(l => l.Id).Order(), own.Select(l => l.Id).Order());
        });

    [Fact]
    public void LevelsFor_AnyPolicyAndRestrictions_ARemovedLevelIsNeverOffered() =>
        Gen.Select(Levels.List[0, 6], Policies, Restrictions.List[0, 4]).Sample((levels, policy, restrictions) =>
        {
            var offered = Offer.LevelsFor(levels, policy, restrictions, Day);
            foreach (var level in offered)
            {
                Assert.DoesNotContain(restrictions, r => (r.Since is null || r.Since <= Day) && (r.IsLiftedByHand || r.Until is null || r.Until >= Day) && level.Demands.Contains(r.Without));
                if (policy.HeadWeight == PolicyChoice.NotAllowed || policy.HeadConditions.Count == 0) Assert.DoesNotContain(BodyDemand.HeadWeight, level.Demands);
                if (policy.Inversion == PolicyChoice.NotAllowed) Assert.DoesNotContain(BodyDemand.Inversion, level.Demands);
                if (policy.Rolls == PolicyChoice.NotAllowed) Assert.DoesNotContain(BodyDemand.Roll, level.Demands);
                if (policy.Spotting == PolicyChoice.NotAllowed) Assert.DoesNotContain(BodyDemand.Spotting, level.Demands);
                if (level.Demands.Contains(BodyDemand.HeadWeight) && level.Dose.Kind == DoseKind.HoldS) Assert.InRange(level.Dose.Amount, 0, policy.HeadHoldCapS);
            }
            Assert.All(levels.Where(l => l.Demands.Count == 0), l => Assert.Contains(l, offered));
            Assert.Equal(levels.Where(offered.Contains), offered);
        });

    [Fact]
    public void LevelsFor_MoreRestrictions_NeverOffersMore() =>
        Gen.Select(Levels.List[0, 6], Policies, Restrictions.List[0, 3], Restrictions).Sample((levels, policy, restrictions, more) =>
            Assert.Empty(Offer.LevelsFor(levels, policy, restrictions.Append(more), Day).Except(Offer.LevelsFor(levels, policy, restrictions, Day))));

    [Fact]
    public void IsAllowed_DefaultPolicy_HeadWeightAndSpottingAreNot()
    {
        Assert.False(Offer.IsAllowed(BodyDemand.HeadWeight, new SafetyPolicy()));
        Assert.False(Offer.IsAllowed(BodyDemand.Spotting, new SafetyPolicy()));
        Assert.True(Offer.IsAllowed(BodyDemand.Inversion, new SafetyPolicy()));
    }

    [Fact]
    public void IsAllowed_HeadWeightPlannedUnderNoCondition_IsNot()
    {
        var planned = new SafetyPolicy { HeadWeight = PolicyChoice.Planned };
        Assert.True(Offer.IsAllowed(BodyDemand.HeadWeight, planned));
        Assert.False(Offer.IsAllowed(BodyDemand.HeadWeight, planned with { HeadConditions = [] }));
    }

    // By hand: a cap of 5 s; a hold of 5 s stays, one of 5.1 s does not, and repetitions are not a hold.
    [Theory]
    [InlineData(DoseKind.HoldS, 5.0, null)]
    [InlineData(DoseKind.HoldS, 5.1, 5)]
    [InlineData(DoseKind.RepetitionsCount, 6.0, null)]
    public void Removed_HeadWeightPlanned_NamesTheCapOfAHoldThatIsTooLong(DoseKind kind, double amount, int? capS)
    {
        var level = new Level { Id = Id(100), Name = "way", Dose = new(kind, (decimal)amount), Demands = [BodyDemand.HeadWeight] };
        var removed = Offer.Removed(level, new SafetyPolicy { HeadWeight = PolicyChoice.Planned });
        Assert.Equal(capS is null ? [] : [new Removal(BodyDemand.HeadWeight, capS)], removed);
    }

    [Fact]
    public void Removed_NotAllowedAtAll_SaysSoAndNotThatTheHoldIsLong()
    {
        var level = new Level { Id = Id(100), Name = "way", Dose = new(DoseKind.HoldS, 60), Demands = [BodyDemand.Spotting, BodyDemand.HeadWeight, BodyDemand.HeadWeight] };
        Assert.Equal([new Removal(BodyDemand.HeadWeight), new Removal(BodyDemand.Spotting)], Offer.Removed(level, new SafetyPolicy()));
    }

    [Fact]
    public void Removed_AnyLevelAndPolicy_IsEmptyExactlyWhereALevelIsOfferedToThoseWithoutRestrictions() =>
        Gen.Select(Levels, Policies).Sample((level, policy) => Assert.Equal(Offer.Removed(level, policy).Count == 0, Offer.LevelsFor([level], policy, [], Day).Count == 1));

    [Theory]
    [InlineData(-1, false)]
    [InlineData(0, true)]
    [InlineData(1, true)]
    public void HoldsOn_DaysBeforeItsEnd_TheLastDayIsIn(int days, bool expected) =>
        Assert.Equal(expected, new Restriction { SchoolId = SchoolId, Id = Id(5), PupilId = Alba.Id, Without = BodyDemand.Roll, Until = Day.AddDays(days) }.HoldsOn(Day));

    [Theory]
    [InlineData(-1, true)]
    [InlineData(0, true)]
    [InlineData(1, false)]
    public void HoldsOn_DaysFromItsStart_TheFirstDayIsIn(int days, bool expected) =>
        Assert.Equal(expected, new Restriction { SchoolId = SchoolId, Id = Id(5), PupilId = Alba.Id, Without = BodyDemand.Roll, Since = Day.AddDays(days) }.HoldsOn(Day));

    [Fact]
    public void HoldsOn_LiftedByHand_GoesOnAfterItsDay() =>
        Assert.True(new Restriction { SchoolId = SchoolId, Id = Id(5), PupilId = Alba.Id, Without = BodyDemand.Roll, Until = Day.AddDays(-30), IsLiftedByHand = true }.HoldsOn(Day));

    [Fact]
    public void HoldsOn_NoEnd_HoldsUntilLifted() =>
        Assert.True(new Restriction { SchoolId = SchoolId, Id = Id(5), PupilId = Alba.Id, Without = BodyDemand.Roll }.HoldsOn(Day.AddYears(50)));
}
