using CsCheck;
using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

public sealed class CountedTrialsTests
{
    [Fact]
    public void Of_TrialsOfOneKind_AreOneEntry()
    {
        // By hand.
        var counted = CountedTrials.Of([ResponseTrial.Single(1, 2, 0, true), ResponseTrial.Single(0, 1, 3, false), new(1, 2, 0, 1, 3), ResponseTrial.Single(1, 2, 0, false, 2.5)]);
        ResponseTrial[] expected = [new(0, 1, 3, 0, 1), new(1, 2, 0, 2, 4), new(1, 2, 0, 0, 1, 2.5)];
        Assert.Equal(expected, counted);
        Assert.Equal(expected, Enumerable.Range(0, counted.Count).Select(k => counted[k]));
    }

    [Fact]
    public void Of_MoreThanACellHolds_AreSeveralEntriesAndLoseNothing()
    {
        var counted = CountedTrials.Of([new(0, 0, 0, 70_000, 200_000), new(0, 0, 0, 5, 65_535)]);
        Assert.Equal(265_535, counted.Sum(t => t.Trials));
        Assert.Equal(70_005, counted.Sum(t => t.Successes));
        Assert.All(counted, t => Assert.InRange(t.Successes, 0, t.Trials));
    }

    [Fact]
    public void Of_AnyOrder_CountsTheSame() => Gen.Int[0, 200_000].Sample(seed =>
    {
        var random = new Random(seed);
        var trials = Enumerable.Range(0, 300_000).Select(_ => ResponseTrial.Single(random.Next(900), random.Next(7), random.Next(3), random.Next(2) == 0)).ToArray();
        var ordered = CountedTrials.Of(trials.OrderBy(t => t.Pupil));
        Assert.Equal(ordered, CountedTrials.Of(trials));
        Assert.Equal(trials.GroupBy(t => (t.Pupil, t.Level, t.Lesson)).Select(g => (g.Key, g.Count())).Order(),
            ordered.Select(t => ((t.Pupil, t.Level, t.Lesson), t.Trials)));
    }, iter: 2);

    [Fact]
    public void Of_WhatCannotBe_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => CountedTrials.Of([new(-1, 0, 0, 0, 1)]));
        Assert.Throws<ArgumentException>(() => CountedTrials.Of([new(0, 70_000, 0, 0, 1)]));
        Assert.Throws<ArgumentException>(() => CountedTrials.Of([new(0, 0, 0, 2, 1)]));
        Assert.Throws<ArgumentException>(() => new ResponseData(Tables.Pupils(1), Tables.Levels(1), CountedTrials.Of([new(1, 0, 0, 0, 1)])));
        Assert.Throws<ArgumentException>(() => new ResponseData(Tables.Pupils(1), Tables.Levels(1), CountedTrials.Of([new(0, 1, 0, 0, 1)])));
        Assert.Throws<ArgumentException>(() => new ResponseData(Tables.Pupils(1), [new(0)], CountedTrials.Of([new(0, 0, 0, 0, 1, 2.0)])));
    }

    [Fact]
    public void Fit_CountedTrials_IsTheFitOfSingleOnesToTheBit()
    {
        var data = Tables.SimulatedClass();
        var (one, other) = (ResponseModel.Fit(data), ResponseModel.Fit(new(data.Pupils, data.Levels, CountedTrials.Of(data.Trials))));
        Assert.Equal(one.EvidenceNats, other.EvidenceNats);
        for (var i = 0; i < 30; i++) Assert.Equal(one.Chance(i, i % 6, 5)!.Logit, other.Chance(i, i % 6, 5)!.Logit);
    }
}
