using System.Text.Json;
using System.Text.Json.Serialization;
using CsCheck;
using Slantwise.Records.Entries;
using Slantwise.Records.Evidence;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using static Slantwise.Records.Tests.Evidence.LessonBuilder;

namespace Slantwise.Records.Tests.Evidence;

public sealed class EvidenceLawsTests
{
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web) { Converters = { new JsonStringEnumConverter() } };

    private static readonly string[] Tries = ["1", "0", "4.2s", "5.1s", "0.4s"];

    private static readonly string?[] Ticks = [null, "", "1", "2", "1 2"];

    private static readonly string[] Names = ["Ada", "Ben", "Cem", "Dia"];

    private sealed record WrittenSet(int Pupil, int Task, int Set, int? Level, int? Predicted, string Tries, string? Cues, NextLevel? Decision);

    // Anything a class may write: levels missing, off the sheet or not offered, unfinished sets, cues checked or not.
    private static readonly Gen<WrittenSet[]> Written = Gen
        .Select(
            Gen.Select(Gen.Int[0, 3], Gen.Int[1, 2], Gen.Int[1, 3]),
            Gen.Int[0, 4],
            Gen.Int[-1, 6],
            Gen.Int[0, 4].Select(i => Tries[i]).Array[0, 6],
            Gen.Int[0, 4].Select(i => Ticks[i]),
            Gen.Int[0, 3])
        .Select((place, level, predicted, tries, cues, decision) => new WrittenSet(
            place.Item1, place.Item2, place.Item3, level == 0 ? null : level, predicted < 0 ? null : predicted,
            string.Join(' ', tries), cues, decision == 0 ? null : (NextLevel)decision))
        .Array[0, 14]
        .Select(sets => sets.DistinctBy(s => (s.Pupil, s.Task, s.Set)).ToArray());

    private static LessonBuilder Lesson(WrittenSet[] sets)
    {
        var lesson = new LessonBuilder().Pupils(Names)
            .Task(1, "V-sit", ["chest up", "toes long"], (1, 3, null), (2, 5, null), (3, 8, BodyDemand.HeadWeight))
            .Task(2, "Roll", ["chin in", "round back"], (1, 2, null), (2, 4, BodyDemand.Roll))
            .Restrict("Ben", BodyDemand.Roll);
        foreach (var s in sets)
            lesson.Set(Names[s.Pupil], s.Set, s.Level, s.Predicted, null, s.Tries, s.Cues, s.Decision, s.Task);
        return lesson;
    }

    private static string Text(LessonRecord record) => JsonSerializer.Serialize(LessonEvidence.Of(record), Json);

    [Fact]
    public void Of_EntriesInAnyOrder_IsTheSame() => Written
        .SelectMany(sets => Gen.Shuffle(Lesson(sets).Entries.ToArray()).Select(shuffled => (sets, shuffled)))
        .Sample(x =>
        {
            var record = Lesson(x.sets).Record();
            Assert.Equal(Text(record), Text(record with { Entries = x.shuffled }));
        });

    [Fact]
    public void Of_EntriesTakenTwice_IsTheSame() => Written.Sample(sets =>
    {
        var record = Lesson(sets).Record();
        Assert.Equal(Text(record), Text(record with { Entries = [.. record.Entries, .. record.Entries] }));
    });

    [Fact]
    public void Of_AddedThenWithdrawn_IsTheSame() => Written.Sample(sets =>
    {
        var lesson = Lesson(sets);
        var before = Text(lesson.Record());
        foreach (var fact in new EntryFact[] { new Choice(LevelId(1, 2)), new Trial(true), new Decision(NextLevel.Harder) })
        {
            var added = lesson.Add("Dia", 1, 4, fact, fact is Trial ? 1 : null);
            lesson.Add("Dia", 1, 4, new Withdrawal(), supersedes: added.Id);
        }
        Assert.Equal(before, Text(lesson.Record()));
    });

    [Fact]
    public void Of_CorrectedAndCorrectedBack_IsTheSameButForTheEntry() => Written.Where(sets => sets.Length > 0).Sample(sets =>
    {
        var lesson = Lesson(sets);
        var before = Text(lesson.Record());
        if (lesson.Entries.FirstOrDefault(e => e.Fact is Trial) is not { } first) return;
        var (pupil, task) = (Names.Single(n => PupilId(n) == first.PupilId), TaskId(1) == first.TaskId ? 1 : 2);
        var trial = (Trial)first.Fact;
        var wrong = lesson.Add(pupil, task, first.SetNumber, trial with { IsSuccess = !trial.IsSuccess }, first.TrialNumber, first.Id);
        Assert.NotEqual(before, Text(lesson.Record()));
        var right = lesson.Add(pupil, task, first.SetNumber, trial, first.TrialNumber, wrong.Id);
        Assert.Equal(before.Replace(first.Id.ToString(), right.Id.ToString()), Text(lesson.Record()));
    });

    [Fact]
    public void Of_AnyLog_EveryTryIsCountedOnceAndCanBeTraced() => Written.Sample(sets =>
    {
        var lesson = Lesson(sets);
        var evidence = LessonEvidence.Of(lesson.Record());
        var trials = lesson.Entries.Where(e => e.Fact is Trial).Select(e => e.Id).Order().ToList();
        Assert.Equal(trials, evidence.Tasks.SelectMany(t => t.Levels).SelectMany(l => l.Success.EntryIds).Order());
        Assert.Equal(trials, evidence.Pupils.SelectMany(p => p.Tasks).SelectMany(t => t.Levels).SelectMany(l => l.Success.EntryIds).Order());
        var known = lesson.Entries.Select(e => e.Id).ToHashSet();
        Assert.All(evidence.Conferences.SelectMany(c => c.EntryIds).Concat(evidence.Pupils.SelectMany(p => p.Flags).SelectMany(f => f.EntryIds)), id => Assert.Contains(id, known));
    });

    [Fact]
    public void Of_AnyLog_AsksAtMostTwiceAPupilAndSafetyFirst() => Written.Sample(sets =>
    {
        var talks = LessonEvidence.Of(Lesson(sets).Record()).Conferences;
        Assert.All(talks.GroupBy(t => t.PupilId), g => Assert.True(g.Count() <= 2));
        Assert.Equal(talks.OrderByDescending(t => t.IsSafety), talks);
        var endangered = sets.Where(s => s is { Task: 1, Level: 3 } || s is { Task: 2, Level: 2, Pupil: 1 }).Select(s => PupilId(Names[s.Pupil])).Distinct();
        Assert.Equal(endangered.Order(), talks.Where(t => t.IsSafety).Select(t => t.PupilId).Distinct().Order());
    });

    [Fact]
    public void Of_ResultsTurnedOver_LeavesTheOrderOfPupils() => Written.Sample(sets =>
    {
        // Who is listed where must not depend on how well anybody did: turning every try over keeps the order of pupils,
        // and of those who are asked something both times.
        var turned = sets.Select(s => s with { Tries = s.Tries.Replace('1', 'x').Replace('0', '1').Replace('x', '0') }).ToArray();
        var there = LessonEvidence.Of(Lesson(sets).Record());
        var back = LessonEvidence.Of(Lesson(turned).Record());
        Assert.Equal(there.Pupils.Select(p => p.PupilId), back.Pupils.Select(p => p.PupilId));
        List<Guid> Asked(LessonEvidence e) => e.Conferences.Where(c => !c.IsSafety).Select(c => c.PupilId).Distinct().ToList();
        var both = Asked(there).Intersect(Asked(back)).ToHashSet();
        Assert.Equal(Asked(there).Where(both.Contains), Asked(back).Where(both.Contains));
    });
}
