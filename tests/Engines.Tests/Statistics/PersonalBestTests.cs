using CsCheck;
using Slantwise.Engines.Statistics;

namespace Slantwise.Engines.Tests.Statistics;

public sealed class PersonalBestTests
{
    private static readonly Gen<HoldAttempt[]> Attempts = Gen
        .Select(Gen.Int[-1, 12], Gen.Int[0, 8], Gen.Bool)
        .Select((held, dose, reached) => new HoldAttempt(held < 0 ? null : held, dose == 0 ? null : dose, reached))
        .Array[0, 12];

    [Fact]
    public void Of_TimedTries_IsTheLongestAndItsPlace() =>
        Assert.Equal(new PersonalBest(4.2, false, 1), PersonalBest.Of([new(3, 5, false), new(4.2, 5, false), new(4.2, 5, false)]));

    [Fact]
    public void Of_SuccessNobodyTimed_IsAtLeastTheDose() =>
        Assert.Equal(new PersonalBest(5, true, 1), PersonalBest.Of([new(4.2, 5, false), new(null, 5, true)]));

    [Fact]
    public void Of_TimedAsLongAsTheDose_GoesBeforeTheUntimed() =>
        Assert.Equal(new PersonalBest(5, false, 1), PersonalBest.Of([new(null, 5, true), new(5, 5, true)]));

    [Fact]
    public void Of_NothingTimedOrReached_IsNone()
    {
        Assert.Null(PersonalBest.Of([]));
        Assert.Null(PersonalBest.Of([new(null, 5, false), new(null, null, true)]));
    }

    [Fact]
    public void Of_ImpossibleTimes_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PersonalBest.Of([new(-1, 5, false)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => PersonalBest.Of([new(double.NaN, 5, false)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => PersonalBest.Of([new(3, 0, false)]));
    }

    [Fact]
    public void Of_AnyTries_AgreesWithSorting() => Attempts.Sample(attempts =>
    {
        var expected = attempts
            .Select((a, i) => (Seen: a.HeldS ?? (a.HasReachedDose ? a.DoseS : null), IsLowerBound: a.HeldS is null, i))
            .Where(x => x.Seen is not null)
            .OrderByDescending(x => x.Seen).ThenBy(x => x.IsLowerBound).ThenBy(x => x.i)
            .Select(x => (PersonalBest?)new PersonalBest(x.Seen!.Value, x.IsLowerBound, x.i))
            .FirstOrDefault();
        Assert.Equal(expected, PersonalBest.Of(attempts));
    });

    [Fact]
    public void Of_OneMoreTry_NeverGetsShorter() => Gen.Select(Attempts, Attempts).Sample((some, more) =>
    {
        if (PersonalBest.Of(some) is { } before)
            Assert.True(PersonalBest.Of([.. some, .. more])!.Value.HeldS >= before.HeldS);
    });
}
