using CsCheck;
using Slantwise.Engines.Statistics;

namespace Slantwise.Engines.Tests.Statistics;

public sealed class LongStayTests
{
    private static readonly Gen<DecidedSet[]> Sets = Gen.Int[0, 5].SelectMany(n => Gen.Select(Gen.Int[0, n], Gen.Int[1, 6]).Select((s, d) =>
        new DecidedSet(s, n, d > 3 ? DecisionDirection.Same : (DecisionDirection)d))).Array[0, 25];

    [Fact]
    public void Of_SetsByHand_FindsBothKinds()
    {
        // By hand: three times 5 of 5 and stayed; then harder; four sets of 1 of 5 and stayed, one of two trials passed over; a middle set ends it.
        DecidedSet easy = new(5, 5, DecisionDirection.Same), hard = new(1, 5, DecisionDirection.Same);
        DecidedSet[] sets = [easy, easy, easy, easy with { Next = DecisionDirection.Harder }, hard, hard, new(2, 2, DecisionDirection.Same), hard, hard, new(2, 5, DecisionDirection.Same), hard, hard];
        Assert.Equal([new LongStay(StayKind.NearlyAlways, 0, 3), new LongStay(StayKind.Seldom, 4, 4)], LongStay.Of(sets));
    }

    [Theory]
    [InlineData(9, 10, true)]
    [InlineData(8, 9, false)]
    [InlineData(2, 5, false)]
    [InlineData(1, 3, true)]
    [InlineData(3, 3, true)]
    public void Of_ThreeAlikeAtTheEdge_KeepsToTheRule(int successes, int trials, bool isLong) =>
        Assert.Equal(isLong, LongStay.Of(Enumerable.Repeat(new DecidedSet(successes, trials, DecisionDirection.Same), 3).ToArray()).Count == 1);

    [Fact]
    public void Of_AnySets_AgreesWithThePatternOfLetters() => Sets.Sample(sets =>
    {
        // The plain second version: a letter a set, sets passed over left out, and a search for runs. A move ends a stay, so it is a letter of its own.
        var letters = sets.Select((s, i) => (Index: i, Letter: s.Next != DecisionDirection.Same ? 'x' : s.TrialCount < 3 ? ' '
            : (decimal)s.SuccessCount / s.TrialCount >= .9m ? 'a' : (decimal)s.SuccessCount / s.TrialCount < .4m ? 'b' : 'c')).Where(l => l.Letter != ' ').ToList();
        var text = string.Concat(letters.Select(l => l.Letter));
        var expected = System.Text.RegularExpressions.Regex.Matches(text, "a{3,}|b{3,}")
            .Select(m => new LongStay(m.Value[0] == 'a' ? StayKind.NearlyAlways : StayKind.Seldom, letters[m.Index].Index, m.Length));
        Assert.Equal(expected, LongStay.Of(sets));
    });

    [Fact]
    public void Of_OutsideItsRange_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => LongStay.Of([new(3, 2, DecisionDirection.Same)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => LongStay.Of([new(1, 2, (DecisionDirection)7)]));
    }

    [Fact]
    public void Exploration_OfLevelsByHand_CountsEachOpenOneOnce()
    {
        var explored = LevelExploration.Of([1, 2, 2, 7], [1, 2, 3, 4]);
        Assert.Equal(new LevelExploration(2, 4), explored);
        Assert.Equal(.5, explored.TriedFraction);
        Assert.Null(LevelExploration.Of([1], []).TriedFraction);
        Gen.Select(Gen.Int[0, 9].Array, Gen.Int[0, 9].Array).Sample((tried, open) =>
            Assert.Equal(new LevelExploration(tried.Intersect(open).Count(), open.Distinct().Count()), LevelExploration.Of(tried, open)));
    }
}
