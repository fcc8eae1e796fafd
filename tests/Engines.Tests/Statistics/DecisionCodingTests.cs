using CsCheck;
using Slantwise.Engines.Statistics;

namespace Slantwise.Engines.Tests.Statistics;

public sealed class DecisionCodingTests
{
    // By hand from the coding: 80 in 100 of at least 5, 60 to 79, below 60, below 3 tries.
    [Theory]
    [InlineData(4, 5, DecisionDirection.Harder, DecisionPattern.Progress)]
    [InlineData(4, 5, DecisionDirection.Same, DecisionPattern.Consolidate)]
    [InlineData(5, 5, DecisionDirection.Easier, DecisionPattern.Retreat)]
    [InlineData(3, 5, DecisionDirection.Harder, DecisionPattern.Stretch)]
    [InlineData(3, 5, DecisionDirection.Same, DecisionPattern.Consolidate)]
    [InlineData(3, 4, DecisionDirection.Easier, DecisionPattern.SafeStep)]
    [InlineData(2, 5, DecisionDirection.Harder, DecisionPattern.Overreach)]
    [InlineData(2, 5, DecisionDirection.Same, DecisionPattern.Persist)]
    [InlineData(0, 3, DecisionDirection.Easier, DecisionPattern.Adjust)]
    [InlineData(2, 2, DecisionDirection.Harder, DecisionPattern.NoEvidence)]
    [InlineData(0, 0, DecisionDirection.Same, DecisionPattern.NoEvidence)]
    public void Of_OneDecision_IsTheCodedPattern(int successes, int trials, DecisionDirection next, DecisionPattern expected) =>
        Assert.Equal(expected, DecisionCoding.Of(successes, trials, next));

    [Theory]
    [InlineData(3, 3)]
    [InlineData(4, 4)]
    public void Of_ShortSetThatAllSucceeded_AsksForNoReason(int successes, int trials)
    {
        Assert.Equal(DecisionPattern.Stretch, DecisionCoding.Of(successes, trials, DecisionDirection.Harder));
        Assert.Equal(DecisionPattern.Consolidate, DecisionCoding.Of(successes, trials, DecisionDirection.Same));
        Assert.Equal(DecisionPattern.SafeStep, DecisionCoding.Of(successes, trials, DecisionDirection.Easier));
    }

    [Fact]
    public void BandOf_EveryCountToSixty_AgreesWithExactShares()
    {
        for (var n = 0; n <= 60; n++)
        {
            for (var k = 0; k <= n; k++)
            {
                var expected = n < 3 ? SuccessBand.TooFew
                    : (decimal)k / n < 0.6m ? SuccessBand.Low
                    : (decimal)k / n >= 0.8m && n > 4 ? SuccessBand.High
                    : SuccessBand.Middle;
                Assert.Equal(expected, DecisionCoding.BandOf(k, n));
            }
        }
    }

    [Fact]
    public void Of_AnyCount_StayingAsksOnlyWhereFewSucceeded() => WilsonIntervalTests.Counts.Sample(c =>
    {
        var stay = DecisionCoding.Of(c.Successes, c.Trials, DecisionDirection.Same);
        Assert.Equal(DecisionCoding.BandOf(c.Successes, c.Trials) == SuccessBand.Low, stay == DecisionPattern.Persist);
    });

    [Fact]
    public void Of_UnknownDirection_Throws() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => DecisionCoding.Of(3, 5, (DecisionDirection)9));

    [Fact]
    public void Consistency_TenDecisionsByHand_IsSevenOfTen()
    {
        // By hand: 3 progress + 3 consolidate + 1 adjust agree; 1 overreach, 1 persist, 1 retreat do not.
        DecisionPattern[] patterns =
        [
            DecisionPattern.Progress, DecisionPattern.Progress, DecisionPattern.Progress,
            DecisionPattern.Consolidate, DecisionPattern.Consolidate, DecisionPattern.Consolidate,
            DecisionPattern.Overreach, DecisionPattern.Persist, DecisionPattern.Adjust, DecisionPattern.Retreat,
        ];
        var consistency = DecisionConsistency.Of(patterns);
        Assert.Equal(new DecisionConsistency(7, 10, 0), consistency);
        Assert.Equal(0.7, consistency.ShareFraction);
    }

    [Fact]
    public void Consistency_WithoutEvidence_HasNoShare()
    {
        var consistency = DecisionConsistency.Of([DecisionPattern.NoEvidence, DecisionPattern.NoEvidence]);
        Assert.Equal(new DecisionConsistency(0, 0, 2), consistency);
        Assert.Null(consistency.ShareFraction);
    }

    [Fact]
    public void Consistency_AnyPatterns_CountsEachOnce() => Gen.Enum<DecisionPattern>().Array[0, 30].Sample(patterns =>
    {
        var consistency = DecisionConsistency.Of(patterns);
        // The plain second version: the patterns that ask for a reason, named and taken away.
        var asked = patterns.Count(p => p is DecisionPattern.Retreat or DecisionPattern.Overreach or DecisionPattern.Persist);
        Assert.Equal(patterns.Length, consistency.DecidedCount + consistency.NoEvidenceCount);
        Assert.Equal(consistency.DecidedCount - asked, consistency.ConsistentCount);
    });
}
