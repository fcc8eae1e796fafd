using System.Text.Json;
using System.Text.Json.Serialization;
using CsCheck;
using Slantwise.Engines.Statistics.Responses;
using Slantwise.Records.Entries;
using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.Chances;
using Slantwise.Records.Evidence.Live;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Simulation;
using Slantwise.Records.Tests.Evidence.Chances;
using Slantwise.Records.Tests.Simulation;
using static Slantwise.Records.Tests.Evidence.LessonBuilder;

namespace Slantwise.Records.Tests.Evidence.Live;

public sealed class LiveClassTests
{
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web) { Converters = { new JsonStringEnumConverter() } };

    // Three lessons on paper with its gaps and corrections; the last one is the one that goes on.
    private static readonly IReadOnlyList<LessonRecord> Unit = UnitOf(seed: 5, pupils: 9, lessons: 3);

    [Fact]
    public void Take_ShuffledDuplicatedInBatches_IsTheSameAsFromScratch()
    {
        var (before, lesson) = (Unit.SkipLast(1).ToList(), Unit[^1]);
        Assert.Contains(lesson.Entries, e => e.SupersedesId is not null);
        var scratch = LiveClass.Of(lesson, before);
        Gen.Select(Gen.Shuffle(Twice(lesson.Entries).ToArray()), Gen.Int[1, 40]).Sample(
            (stream, batch) =>
            {
                var live = LiveClass.Of(lesson with { Entries = [] }, before);
                foreach (var entries in stream.Chunk(batch))
                {
                    live.Take(entries);
                    _ = live.Chances;
                }
                Assert.Equal(lesson.Entries.Count, live.EntryCount);
                AssertSame(scratch, live, lesson);
            },
            iter: 12);
    }

    [Fact]
    public void Chances_WithTheSpreadsThatAreHeld_AreThoseOfAFitFromScratch()
    {
        var (before, lesson) = (Unit.SkipLast(1).ToList(), Unit[^1]);
        var held = ClassChances.Of(before, lesson.Sheet!.Content.Tasks, [], lesson.Pupils).Fit;
        var plain = ClassChances.Of(Unit, [], [], options: new()
        {
            AbilitySdLogits = held.AbilitySpread.MedianLogits, ResidualSdLogits = held.ResidualSpread!.Value.MedianLogits, GridPupilCount = 0, ChoicePupilCount = 0,
        });
        var live = LiveClass.Of(lesson with { Entries = [] }, before);
        foreach (var entry in lesson.Entries)
        {
            live.Take([entry]);
            _ = live.Chances;
        }
        Assert.Equal(2, live.Now);
        // The search ends 1e-5 standard errors from the peak, wherever it began.
        AssertNear(plain, live.Chances, lesson, 1e-4);
    }

    [Fact]
    public void QuestionsOf_LessonThatIsOver_AreThoseOfTheWholeEvidence()
    {
        var live = LiveClass.Of(Unit[^1], [.. Unit.SkipLast(1)]);
        var whole = UnitEvidence.Of(Unit);
        var ended = whole.Pupils.Where(p => live.SetsOf(p.PupilId) is { Count: > 0 } sets && sets.All(s => s.IsComplete)).ToList();
        Assert.NotEmpty(ended.SelectMany(p => live.QuestionsOf(p.PupilId)));
        foreach (var pupil in ended)
        {
            Assert.Equal(Text(whole.Conferences.Where(c => c.PupilId == pupil.PupilId)), Text(live.QuestionsOf(pupil.PupilId)));
            Assert.Equal(Text(pupil.Flags.Where(f => f.LessonId == Unit[^1].Lesson.Id)), Text(live.FlagsOf(pupil.PupilId)));
        }
    }

    [Fact]
    public void QuestionsOf_SecondSetAtTheSameLevel_AskOnlyOnceItIsWritten()
    {
        // By hand: 0 of 5, then 0 of 5 at the same level, is what the rule "stayed" asks about; 0 of 1 so far is not yet.
        LessonBuilder Lesson(string second) => new LessonBuilder().Pupils("Ada").Task(1, "V-sit", [], (1, 3, null), (2, 5, null))
            .Set("Ada", 1, 2, null, null, "0 0 0 0 0").Set("Ada", 2, 2, null, null, second);
        var record = Lesson("0").Record();
        Assert.Empty(LiveClass.Of(record, []).QuestionsOf(PupilId("Ada")));
        Assert.Equal("ReasonStayed", Assert.Single(LiveClass.Of(Lesson("0 0 0 0 0").Record(), []).QuestionsOf(PupilId("Ada"))).ReasonKey);
    }

    [Fact]
    public void QuestionsOf_LevelThatIsNotOffered_AskAtOnce()
    {
        var record = new LessonBuilder().Pupils("Ben").Task(1, "Roll", [], (1, 2, null), (2, 4, BodyDemand.Roll)).Restrict("Ben", BodyDemand.Roll)
            .Set("Ben", 1, 2, null, null, "").Record();
        Assert.True(Assert.Single(LiveClass.Of(record, []).QuestionsOf(PupilId("Ben"))).IsSafety);
    }

    [Fact]
    public void Follow_LogWithoutAPupil_IsTheSameAsIfTheyHadNeverWritten()
    {
        var (before, lesson) = (Unit.SkipLast(1).ToList(), Unit[^1]);
        var erased = lesson.Entries.First(e => e.PupilId is not null).PupilId;
        var kept = lesson.Entries.Where(e => e.PupilId != erased).ToList();
        var live = LiveClass.Of(lesson, before);
        live.Follow(kept);
        Assert.Empty(live.SetsOf(erased!.Value));
        AssertSame(LiveClass.Of(lesson with { Entries = kept }, before), live, lesson);
    }

    [Fact]
    public void Take_EntryPutRightUnderAnotherName_LeavesTheFirstInEitherOrder()
    {
        var record = new LessonBuilder().Pupils("Ada", "Ben").Task(1, "V-sit", [], (1, 3, null)).Set("Ada", 1, 1, null, null, "1 1 0 1 1").Record();
        var wrong = record.Entries.First(e => e.Fact is Trial);
        var right = wrong with { Id = LessonBuilder.Id(9, 1), PupilId = PupilId("Ben"), SupersedesId = wrong.Id, DeviceSequence = wrong.DeviceSequence + 100 };
        foreach (var log in new[] { record.Entries.Append(right), record.Entries.Prepend(right) })
        {
            var live = LiveClass.Of(record with { Entries = [] }, []);
            foreach (var entry in log) live.Take([entry]);
            Assert.Equal(4, Assert.Single(live.SetsOf(PupilId("Ada"))).Trials.Count);
            Assert.Single(Assert.Single(live.SetsOf(PupilId("Ben"))).Trials);
        }
    }

    [Fact]
    public void Take_SomebodyWhoLeftTheClass_CountsForTheLevelsAsFromScratch()
    {
        var (before, lesson) = (Unit.SkipLast(1).Select(r => r with { Pupils = [.. r.Pupils.Skip(1)], Entries = [.. r.Entries.Where(e => e.PupilId != r.Pupils[0].Id)] }).ToList(), Unit[^1]);
        var left = lesson with { Pupils = [.. lesson.Pupils.Skip(1)] };
        var live = LiveClass.Of(left with { Entries = [] }, before);
        foreach (var entry in lesson.Entries) live.Take([entry]);
        AssertSame(LiveClass.Of(left, before), live, left);
        Assert.Equal(ClassChances.Of([.. before, left], [], []).TrialCount, live.Chances.TrialCount);
        Assert.True(live.Chances.TrialCountOf(lesson.Pupils[0].Id) > 0);
    }

    [Fact]
    public void Take_WhatIsHereAlready_KeepsTheAnswer()
    {
        var live = LiveClass.Of(Unit[^1], []);
        var chances = live.Chances;
        Assert.Empty(live.Take(Unit[^1].Entries));
        Assert.Same(chances, live.Chances);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0, 2)]
    [InlineData(1, 0)]
    [InlineData(1, 3)]
    public void Settle_DemoClass_QuickAnswerWasNear(int group, int before)
    {
        var demo = DemoSchool.Of(1, new DateOnly(2026, 3, 11)).Simulations[group];
        var records = Enumerable.Range(0, before + 1).Select(i => ClassChancesTests.RecordOf(demo, i)).ToList();
        var live = LiveClass.Of(records[^1], records[..^1]);
        var quick = live.Chances;
        var full = live.Settle();
        Assert.Same(full, live.Chances);
        var (chance, ends) = Furthest(quick, full, records[^1], live.Now);
        TestContext.Current.TestOutputHelper!.WriteLine($"{before} lessons before: chance {chance:0.000}, ends {ends:0.000}");
        Assert.InRange(chance, 0, .02);
        Assert.InRange(ends, 0, .04);
    }

    private static (double Chance, double Ends) Furthest(ClassChances one, ClassChances other, LessonRecord lesson, int now)
    {
        var (chance, ends) = (0.0, 0.0);
        foreach (var (a, b) in Pairs(one, other, lesson, now))
        {
            chance = Math.Max(chance, Math.Abs(a.ChanceFraction - b.ChanceFraction));
            var ((low, high), (otherLow, otherHigh)) = (a.Range(.9), b.Range(.9));
            ends = Math.Max(ends, Math.Max(Math.Abs(low - otherLow), Math.Abs(high - otherHigh)));
        }
        return (chance, ends);
    }

    private static IEnumerable<(SuccessChance One, SuccessChance Other)> Pairs(ClassChances one, ClassChances other, LessonRecord lesson, int now)
    {
        var levels = lesson.Sheet!.Content.Tasks.SelectMany(t => t.Levels).ToList();
        return lesson.Pupils.SelectMany(p => one.Chances(p.Id, levels, now).Zip(other.Chances(p.Id, levels, now)).Select(x => (x.First!, x.Second!)));
    }

    private static void AssertSame(LiveClass expected, LiveClass live, LessonRecord lesson)
    {
        foreach (var pupil in lesson.Pupils)
        {
            Assert.Equal(Text(expected.SetsOf(pupil.Id)), Text(live.SetsOf(pupil.Id)));
            Assert.Equal(Text(expected.QuestionsOf(pupil.Id)), Text(live.QuestionsOf(pupil.Id)));
            Assert.Equal(Text(expected.FlagsOf(pupil.Id)), Text(live.FlagsOf(pupil.Id)));
        }
        Assert.Equal(expected.Now, live.Now);
        AssertNear(expected.Chances, live.Chances, lesson, 1e-4);
    }

    private static void AssertNear(ClassChances expected, ClassChances found, LessonRecord lesson, double withinLogits)
    {
        Assert.Equal(expected.TrialCount, found.TrialCount);
        foreach (var (a, b) in Pairs(expected, found, lesson, expected.LatestLesson))
        {
            Assert.Equal(a.Logit.MeanLogits, b.Logit.MeanLogits, withinLogits);
            Assert.Equal(a.Logit.SdLogits, b.Logit.SdLogits, withinLogits);
            Assert.Equal(a.TrialCount, b.TrialCount);
        }
    }

    private static IEnumerable<Entry> Twice(IReadOnlyList<Entry> entries) => entries.Concat(entries.Where((_, i) => i % 3 == 0));

    private static string Text<T>(T value) => JsonSerializer.Serialize(value, Json);

    private static List<LessonRecord> UnitOf(ulong seed, int pupils, int lessons)
    {
        var simulated = ClassSimulator.Run(SimulationPlans.Unit(seed, pupils, lessons));
        return [.. Enumerable.Range(0, lessons).Select(i => ClassChancesTests.RecordOf(simulated, i))];
    }
}
