using Slantwise.Desk.Pages.Evidence;
using Slantwise.Engines.Statistics;
using Slantwise.Records.Evidence.Growth;

namespace Slantwise.Surface.Tests.Desk.Evidence;

public sealed class DecisionTextTests
{
    [Fact]
    public void Of_Decisions_SayHowManyGoWithTheirSetAndTheRange()
    {
        using var english = new Spoken("en-GB");
        // 7 of 10 as in the hand-counted example of the engine; Wilson at 90 %: 0.442 to 0.874, by hand from [Wilson1927].
        Assert.Equal("7 of 10 decisions go with the set before them. Likely 4 to 9 in 10. 2 more followed too few tries and count neither way.", DecisionText.Of(new DecisionConsistency(7, 10, 2)));
        Assert.Equal("3 of 4 decisions go with the set before them. Too few for a range.", DecisionText.Of(new DecisionConsistency(3, 4, 0)));
        Assert.StartsWith("No decision", DecisionText.Of(new DecisionConsistency(0, 0, 5)));
    }

    [Fact]
    public void IsAskedFor_ThreePatterns_AreThoseThatDoNotCountAsConsistent() =>
        Assert.All(DecisionText.Patterns, p => Assert.Equal(DecisionConsistency.Of([p]).ConsistentCount == 0, DecisionText.IsAskedFor(p)));

    [Fact]
    public void Of_LongStays_AreNoneWhereNobodyStayed()
    {
        using var english = new Spoken("en-GB");
        Assert.Null(DecisionText.Of(new LongStays(0, 0, 0, [])));
        Assert.Equal("2 pupils stayed for three sets or more. Stays where nearly all came off: 1; where few did: 2.", DecisionText.Of(new LongStays(1, 2, 2, [])));
    }
}
