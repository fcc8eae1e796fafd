using System.Globalization;
using Slantwise.Engines.Statistics.Reach;
using Slantwise.Records.Evidence.Chances;
using Slantwise.Records.Evidence.Reach;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;

namespace Slantwise.Records.Tests.Evidence.Reach;

public sealed class ReachReadingTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en-GB");
    private static readonly CultureInfo Spanish = CultureInfo.GetCultureInfo("es-ES");

    private static readonly (string, string)[] TwoTooHard =
        [("Fay", "0 0 1 0 0"), ("Ann", "1 1 1 1 0"), ("Ben", "1 1 0 1 1"), ("Cas", "1 0 1 1 1"), ("Gus", "0 1 0 0 0"), ("Dov", "1 1 1 0 1"), ("Eli", "1 1 1 1 0")];

    [Fact]
    public void Of_TwoForWhomAllIsTooHard_NamesThemByLabelAndAsksForAShorterHold()
    {
        var (reach, reading) = Read(English, Lesson(TwoTooHard));
        Assert.StartsWith($"About {Math.Round(reach.Whole.IncludedCount)} of 7 pupils ({reach.Whole.LeastCount} to {reach.Whole.MostCount} could) have a level here within reach", reading.Headline);
        Assert.Contains("(60 to 90 of 100 tries).", reading.Headline);
        Assert.Equal("For 2 pupils every level here is probably still too hard: Fay and Gus.", Note(reading, ReachNoteKind.AllTooHard));
        var added = reading.Added!;
        Assert.True(added.Dose.Amount < 10);
        Assert.StartsWith($"Whom would a shorter hold include? Of 7 other levels looked at, “{added.Name}, hold {added.Dose.Amount:0} s” would ", Note(reading, ReachNoteKind.Addition));
        Assert.Matches("(all 2 of those left|about 1 of the 2 left)\\.$", Note(reading, ReachNoteKind.Addition));
    }

    [Fact]
    public void Of_MoreMissingThanNamed_SaysThatTheOthersCannotBeTold()
    {
        var (reach, reading) = Read(English, Lesson([.. Enumerable.Range(1, 12).Select(i => ($"P{i}", "1 1 1 0 1"))]));
        Assert.Empty(reach.LeftOut);
        var expected = (int)Math.Round(reach.Whole.IncludedCount);
        Assert.InRange(expected, reach.Whole.LeastCount, reach.Whole.MostCount);
        Assert.True(expected < 12, $"{expected}");
        Assert.EndsWith(" Who has none cannot be told yet.", reading.Headline);
    }

    [Fact]
    public void Of_AClassWithTries_SaysHowManyAndThatLevelsWereChosen()
    {
        var (reach, reading) = Read(English, Lesson(TwoTooHard));
        Assert.Equal(7 * 15, reach.TrialCount);
        Assert.StartsWith("Behind it: 105 tries of this class, over all tasks, by 7 of 7 pupils.", reading.Grounds);
        Assert.Contains("a model", reading.Grounds);
        Assert.Contains("chose their levels themselves", reading.Grounds);
    }

    [Fact]
    public void Of_AllHeldEveryTime_SaysThatNothingStretchesThem()
    {
        var (_, reading) = Read(English, Lesson([.. Enumerable.Range(1, 6).Select(i => ($"P{i}", "1 1 1 1 1 1 1 1 1 1"))], sets: 4));
        Assert.Equal("For 6 pupils every level here is probably certain already, so nothing stretches: P1, P2, P3, P4, P5 and P6.", Note(reading, ReachNoteKind.AllCertain));
        Assert.StartsWith("Nobody is likely to need level 1 (", Note(reading, ReachNoteKind.Unneeded));
        Assert.Contains("A hint, not a verdict", Note(reading, ReachNoteKind.Unneeded));
    }

    [Fact]
    public void Of_BeforeAnyTry_RestsOnTheTeachersOrderAndNamesNobody()
    {
        var (_, reading) = Read(English, Lesson([.. Enumerable.Range(1, 6).Select(i => ($"P{i}", ""))]));
        Assert.Contains("rests on your order of the levels and on wide assumptions alone", reading.Headline);
        Assert.StartsWith("Behind it: 0 tries.", reading.Grounds);
        Assert.Empty(reading.Notes);
        Assert.Null(reading.Added);
    }

    [Fact]
    public void Of_APupilWithoutAnAllowedLevel_IsNamedEvenBeforeAnyTry()
    {
        var record = new LessonBuilder(1).Pupils("Ann", "Ben").Task(1, "Frog", ["a"], (1, 3, BodyDemand.HandWeight)).Restrict("Ben", BodyDemand.HandWeight).Record();
        var (_, reading) = Read(English, record);
        Assert.Equal("For 1 pupil the policy or a restriction leaves no level here: Ben.", Note(reading, ReachNoteKind.NothingAllowed));
    }

    [Theory]
    [InlineData("en-GB")]
    [InlineData("es-ES")]
    public void Of_AnyClass_NoSentenceNamesAPupilAndALevel(string language)
    {
        var (reach, reading) = Read(CultureInfo.GetCultureInfo(language), Lesson(TwoTooHard));
        var sentences = reading.Notes.Select(n => n.Sentence).Append(reading.Headline).Append(reading.Grounds).ToList();
        Assert.True(sentences.Count > 3);
        Assert.DoesNotContain(sentences, s => reach.Pupils.Any(p => s.Contains(p.Label)) && (s.Contains('“') || s.Contains('«')));
    }

    [Fact]
    public void Of_InSpanish_IsNotEnglish()
    {
        var (_, reading) = Read(Spanish, Lesson(TwoTooHard));
        Assert.StartsWith("Unos ", reading.Headline);
        Assert.Equal("Para 2 alumnos, todos los niveles son probablemente todavía demasiado difíciles: Fay y Gus.", Note(reading, ReachNoteKind.AllTooHard));
    }

    [Theory]
    [InlineData("0 0 1 0 0", "1 1 1 1 0", true)]
    [InlineData("1 1 1 1 0", "0 0 1 0 0", false)]
    public void Of_LevelsTheModelPutsTheOtherWayRound_AsksAboutTheOrder(string atFirst, string atSecond, bool isAsked)
    {
        var builder = new LessonBuilder(1, setCount: 2).Pupils([.. Enumerable.Range(1, 16).Select(i => $"P{i}")]).Task(1, "Frog", ["a"], (1, 3, null), (2, 3, null));
        for (var i = 1; i <= 16; i++) builder.Set($"P{i}", 1, level: 1, tries: atFirst).Set($"P{i}", 2, level: 2, tries: atSecond);
        var (_, reading) = Read(English, builder.Record());
        if (!isAsked)
        {
            Assert.DoesNotContain(reading.Notes, n => n.Kind == ReachNoteKind.Order);
            return;
        }
        var note = Note(reading, ReachNoteKind.Order);
        Assert.StartsWith("By this class's tries level 2 looks no harder than level 1: where level 1 comes off 5 of 10, level 2 likely does ", note);
        Assert.EndsWith("Is this the order you want on the sheet?", note);
        Assert.DoesNotContain("chance", note);
    }

    [Fact]
    public void Of_ATaskWithoutLevels_SaysSo()
    {
        var record = Lesson(TwoTooHard);
        var (_, reading) = Read(English, record, record.Sheet!.Content.Tasks[0] with { Levels = [] });
        Assert.Equal("No level of this task is on the sheet.", reading.Headline);
    }

    private static string Note(ReachReading reading, ReachNoteKind kind) => Assert.Single(reading.Notes, n => n.Kind == kind).Sentence;

    private static (TaskReach Reach, ReachReading Reading) Read(CultureInfo culture, LessonRecord record, SheetTask? task = null)
    {
        task ??= record.Sheet!.Content.Tasks[0];
        var candidates = CandidateLevels.Of(task.TaskId, task.Levels, task.Levels);
        var reach = TaskReach.Of(
            task, candidates, record.Pupils, record.School.Policy, record.Restrictions, record.Lesson.Date, ClassChances.Of([record], [task], candidates), ReachBand.Usual);
        return (reach, ReachReading.Of(reach, task, ReachBand.Usual, culture));
    }

    private static LessonRecord Lesson((string Pupil, string Tries)[] pupils, int sets = 3)
    {
        var builder = new LessonBuilder(1, setCount: 4, trialCount: 10).Pupils([.. pupils.Select(p => p.Pupil)]).Task(1, "Tuck sit", ["a"], (1, 10, null));
        foreach (var (pupil, tries) in pupils.Where(p => p.Tries.Length > 0))
            for (var set = 1; set <= sets; set++) builder.Set(pupil, set, level: 1, tries: tries);
        return builder.Record();
    }
}
