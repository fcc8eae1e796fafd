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
        Gen.Select(Gen.Bool, Gen.Bool, Gen.Bool, (head, upside, roll) => new SafetyPolicy
        {
            HeadWeight = head ? PolicyChoice.Planned : PolicyChoice.NotAllowed,
            Inversion = upside ? PolicyChoice.Planned : PolicyChoice.NotAllowed,
            Rolls = roll ? PolicyChoice.Planned : PolicyChoice.NotAllowed,
        });

    private static readonly Gen<Level> Levels = Gen.Select(Gen.Int[100, 999], Gen.OneOf(All).Array[0, 3], (id, demands) =>
        new Level { Id = Id(id), Name = "way " + id, Dose = new(DoseKind.HoldS, 3m), Demands = demands });

    private static readonly Gen<Restriction> Restrictions = Gen.Select(Gen.OneOf(All), Gen.Int[-3, 3], Gen.Bool, (without, days, isOpen) =>
        new Restriction { SchoolId = SchoolId, Id = Id(5), PupilId = Alba.Id, Without = without, Until = isOpen ? null : Day.AddDays(days) });

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
                Assert.DoesNotContain(restrictions, r => (r.Until is null || r.Until >= Day) && level.Demands.Contains(r.Without));
                if (policy.HeadWeight == PolicyChoice.NotAllowed) Assert.DoesNotContain(BodyDemand.HeadWeight, level.Demands);
                if (policy.Inversion == PolicyChoice.NotAllowed) Assert.DoesNotContain(BodyDemand.Inversion, level.Demands);
                if (policy.Rolls == PolicyChoice.NotAllowed) Assert.DoesNotContain(BodyDemand.Roll, level.Demands);
            }
            Assert.All(levels.Where(l => l.Demands.Count == 0), l => Assert.Contains(l, offered));
            Assert.Equal(levels.Where(offered.Contains), offered);
        });

    [Fact]
    public void LevelsFor_MoreRestrictions_NeverOffersMore() =>
        Gen.Select(Levels.List[0, 6], Policies, Restrictions.List[0, 3], Restrictions).Sample((levels, policy, restrictions, more) =>
            Assert.Empty(Offer.LevelsFor(levels, policy, restrictions.Append(more), Day).Except(Offer.LevelsFor(levels, policy, restrictions, Day))));

    [Fact]
    public void IsAllowed_DefaultPolicy_HeadWeightIsNot()
    {
        Assert.False(Offer.IsAllowed(BodyDemand.HeadWeight, new SafetyPolicy()));
        Assert.True(Offer.IsAllowed(BodyDemand.Inversion, new SafetyPolicy()));
    }

    [Theory]
    [InlineData(-1, false)]
    [InlineData(0, true)]
    [InlineData(1, true)]
    public void HoldsOn_DaysBeforeItsEnd_TheLastDayIsIn(int days, bool expected) =>
        Assert.Equal(expected, new Restriction { SchoolId = SchoolId, Id = Id(5), PupilId = Alba.Id, Without = BodyDemand.Roll, Until = Day.AddDays(days) }.HoldsOn(Day));

    [Fact]
    public void HoldsOn_NoEnd_HoldsUntilLifted() =>
        Assert.True(new Restriction { SchoolId = SchoolId, Id = Id(5), PupilId = Alba.Id, Without = BodyDemand.Roll }.HoldsOn(Day.AddYears(50)));
}
