using CsCheck;
using Slantwise.Records.Schools;
using static Slantwise.Records.Tests.Entries.InventedLesson;

namespace Slantwise.Records.Tests.Schools;

public sealed class ReturnGatesTests
{
    private static readonly DateOnly First = new(2026, 3, 2);
    private int _made;

    [Fact]
    public void Of_StepsOfAPolicy_AreAGateEachFromTheFirstDayUntilLifted()
    {
        // By hand: 21 days after 2 March are 23 March, 28 days are 30 March.
        var gates = Of([new(BodyDemand.Inversion, 21), new(BodyDemand.Roll, 28)], First, []);
        Assert.Equal([(BodyDemand.Inversion, new DateOnly(2026, 3, 23)), (BodyDemand.Roll, new DateOnly(2026, 3, 30))], gates.Select(g => (g.Without, g.Until!.Value)));
        Assert.All(gates, g => Assert.Equal((Alba.Id, SchoolId, (DateOnly?)First, true), (g.PupilId, g.SchoolId, g.Since, g.IsLiftedByHand)));
        Assert.Equal(2, gates.DistinctBy(g => g.Id).Count());
        Assert.All(gates, g => Assert.False(g.HoldsOn(First.AddDays(-1))));
        Assert.All(gates, g => Assert.True(g.HoldsOn(First.AddDays(400))));
    }

    [Fact]
    public void Of_NoSteps_AreNoGates() => Assert.Empty(Of([], First, []));

    [Fact]
    public void Of_StartedAgain_MovesTheGatesAndDoublesNone()
    {
        ReturnStep[] steps = [new(BodyDemand.Inversion, 21)];
        var first = Of(steps, First, []);
        var again = Assert.Single(Of(steps, First.AddDays(10), first));
        Assert.Equal(first[0] with { Until = First.AddDays(31) }, again);
        // A return that began earlier opens no gate sooner.
        var earlier = Assert.Single(Of(steps, First.AddDays(-10), first));
        Assert.Equal(first[0] with { Since = First.AddDays(-10) }, earlier);
        // Somebody else's gate, a restriction that ends by itself, another demand: all are left alone.
        var others = new[] { first[0] with { PupilId = Bruno.Id }, first[0] with { IsLiftedByHand = false }, first[0] with { Without = BodyDemand.Roll } };
        Assert.DoesNotContain(Of(steps, First, others), g => g.Id == first[0].Id);
    }

    [Fact]
    public void LiftedOn_AnyRestrictionAndDays_HoldsAsBeforeUntilThenAndNotAfterwards() =>
        Gen.Select(Gen.Int[-5, 5], Gen.Int[-5, 5], Gen.Bool.Array[3], Gen.Int[-5, 5]).Sample((since, until, has, lifted) =>
        {
            var restriction = new Restriction
            {
                SchoolId = SchoolId, Id = Id(5), PupilId = Alba.Id, Without = BodyDemand.Roll,
                Since = has[0] ? First.AddDays(since) : null, Until = has[1] ? First.AddDays(until) : null, IsLiftedByHand = has[2],
            };
            // One that ended before is not lifted: there is nothing to lift.
            if (!restriction.IsLiftedByHand && restriction.Until < First.AddDays(lifted - 1)) return;
            var after = restriction.LiftedOn(First.AddDays(lifted));
            for (var day = First.AddDays(-8); day <= First.AddDays(8); day = day.AddDays(1))
                Assert.Equal(day < First.AddDays(lifted) && restriction.HoldsOn(day), after?.HoldsOn(day) ?? false);
        });

    private IReadOnlyList<Restriction> Of(IReadOnlyList<ReturnStep> steps, DateOnly firstDay, IReadOnlyList<Restriction> standing) =>
        ReturnGates.Of(steps, Alba, firstDay, standing, () => new Guid(++_made, 7, 7, new byte[8]));
}
