using Slantwise.Engines.Drawing;
using Slantwise.Paper;
using Slantwise.Paper.LessonPages;
using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Files;
using Slantwise.Surface.Tests.Paper.Cards;
using Snapshooter.Xunit3;

namespace Slantwise.Surface.Tests.Paper.LessonPages;

public class LessonPageTests
{
    [Theory]
    [InlineData(PaperSize.A4, false)]
    [InlineData(PaperSize.Letter, false)]
    [InlineData(PaperSize.A4, true)]
    [InlineData(PaperSize.Letter, true)]
    public void Of_LongestLesson_FlowsToASecondPageWithWhatMatters(PaperSize size, bool hasWideSpacing)
    {
        var record = CardLessons.LongLesson();
        foreach (var pupil in record.Pupils.Take(5)) record = record.WithRestriction(pupil, BodyDemand.HandWeight);
        var pages = LessonPage.Of(record, LessonPlans.None, CardLessons.Spanish with { Size = size, HasWideSpacing = hasWideSpacing, NamesOtherLevels = true });
        Assert.Equal(2, pages.Count);
        Assert.All(pages, page => Tidy.Check(page));
        var run = string.Concat(pages.Select(PageText.Run));
        // Cautions and the stop never go; two pages hold the levels, the cues and the debrief even of this lesson.
        // Wide spacing may cut a level to its first line, and says so.
        foreach (var words in record.Sheet!.Content.Tasks.SelectMany(t => hasWideSpacing ? [t.Caution] : t.Cues.Append(t.Caution).Append(t.Levels[^1].Name))) Assert.Contains(words.Replace(" ", ""), run);
        Assert.Contains("Señaldeparar", run);
        if (!hasWideSpacing) Assert.Contains("¿Quélediríais", run);
    }

    // As long as everything may be: see Limits in Records.
    [Theory]
    [InlineData(PaperSize.A4, false)]
    [InlineData(PaperSize.Letter, true)]
    public void Of_EverythingAtItsLimit_IsTwoPagesWithItsCautionsAndSaysWhatWasLeftOut(PaperSize size, bool hasWideSpacing)
    {
        static string Text(string word, int length) => string.Concat(Enumerable.Repeat(word + " ", 60))[..length].Trim();
        var tasks = Enumerable.Range(1, 3).Select(i => PaperLessons.Task(
            i * 100, Text("Wobbling", 80), Text("Purposefully", 300), [.. Enumerable.Repeat(Text("Mammoth", 80), 5)], Text("Warning", 300),
            [.. Enumerable.Repeat((Text("Womanwoman", 80), new Dose(DoseKind.RepetitionsCount, 12345.67m), Array.Empty<BodyDemand>()), 6)]));
        var record = PaperLessons.Of(30, [.. tasks]);
        record = record with
        {
            Class = record.Class with { Name = Text("Wommwomm", 60) },
            Lesson = record.Lesson with { Title = Text("Mmmwmmm", 80), Phases = [.. Enumerable.Repeat(new LessonPhase(PhaseKind.Transition, 180, Text("Mmmmwmm", 300)), 20)] },
            School = record.School with { Policy = new SafetyPolicy { Inversion = PolicyChoice.NotAllowed, Rolls = PolicyChoice.NotAllowed } },
        };
        var pages = LessonPage.Of(record, LessonPlans.None, CardLessons.English with { Size = size, HasWideSpacing = hasWideSpacing });
        Assert.Equal(2, pages.Count);
        Assert.All(pages, page => Tidy.Check(page));
        var run = string.Concat(pages.Select(PageText.Run));
        Assert.Equal(3, run.Split(Text("Warning", 300).Replace(" ", "")).Length - 1);
        Assert.Contains("Leftoutforwantofroom", run);
    }

    [Fact]
    public void Of_ShortLesson_LeavesNothingOutAndSaysAllOfIt()
    {
        var record = CardLessons.ShortLesson();
        var page = Only(record, LessonPlans.None, CardLessons.English);
        Tidy.Check(page);
        var run = page.Run();
        Assert.DoesNotContain("Leftout", run);
        foreach (var words in (string[])["Time: 40 minutes", "25 min practising", "8 mats", "3 sheets and pencils", "Everybody's sheet has the same levels.", "Tell me about the level you are at: how did you come to it?"])
            Assert.Contains(words.Replace(" ", ""), run);
        Assert.All(CardLessons.Figures.Cues, cue => Assert.Contains(cue, page.Words()));
    }

    [Fact]
    public void Of_RestrictedPupils_CountsThemAndNamesThemOnlyWhereAsked()
    {
        var record = PaperLessons.Of(4, PaperLessons.Tripod);
        record = record.WithRestriction(record.Pupils[0], BodyDemand.Inversion);
        var counted = Only(record, LessonPlans.None, CardLessons.English).Run();
        Assert.Contains("1sheethasotherlevels", counted);
        Assert.DoesNotContain("Amara", counted);
        var named = Only(record, LessonPlans.None, CardLessons.English with { NamesOtherLevels = true }).Run();
        Assert.Contains("Amara123.", named);
        Assert.DoesNotContain("Okafor", named);
        Assert.All([counted, named], run => Assert.DoesNotContain("nversion", run));
    }

    [Fact]
    public void Of_TwoOfOneFirstName_AreToldApartByCode()
    {
        var record = PaperLessons.Of(2, PaperLessons.Tripod);
        record = record with { Pupils = [PaperLessons.Pupil(0, "Ben A."), PaperLessons.Pupil(1, "Ben B.")] };
        foreach (var pupil in record.Pupils) record = record.WithRestriction(pupil, BodyDemand.Inversion);
        Assert.Contains("Ben(5B-01)123;Ben(5B-02)123.", Only(record, LessonPlans.None, CardLessons.English with { NamesOtherLevels = true }).Run());
    }

    [Fact]
    public void Of_LessonBefore_SaysWhatItShowedWithCountsAndAsksAboutIt()
    {
        var record = WithPupils(CardLessons.ShortLesson(), 6);
        var run = Only(record, LessonPlans.None with { Before = Before(record, 6) }, CardLessons.English).Run();
        foreach (var words in (string[])
            [
                "Last time, 5 March 2026", "One-foot balance: “Hips level” was left open by 6 of 6 pupils", "After 6 sets with fewer than 6 in 10, made by 6 pupils: easier 0, the same 6, harder 0.",
                "How would you notice “Hips level” while you do it", "Would you read cue 2 aloud",
            ])
            Assert.Contains(words.Replace(" ", ""), run);
        Assert.DoesNotContain("Amara", run);
    }

    [Fact]
    public void Of_LessonBeforeWithOnePupilsTries_SaysThatThatIsNotEnoughToAsk()
    {
        var record = WithPupils(CardLessons.ShortLesson(), 6);
        var run = Only(record, LessonPlans.None with { Before = Before(record, 1) }, CardLessons.English).Run();
        Assert.Contains("Lasttime,5March2026:notenoughtriestoaskabout.", run);
        Assert.DoesNotContain("leftopen", run);
        Assert.Contains("abouttochoosewheretobegin?", run);
    }

    [Fact]
    public void Of_AimsAndOwnDemonstration_StandOnThePageInPlaceOfTheUsualSteps()
    {
        var record = CardLessons.ShortLesson();
        record = record with { Lesson = record.Lesson with { Aims = ["Choose a level and say why"], Demonstration = ["Show the wide base first", "Let two children show level 2"] } };
        var page = Only(record, LessonPlans.None, CardLessons.English);
        Assert.Contains("Aims", page.Words());
        foreach (var words in (string[])["Choose a level and say why", "Show the wide base first", "Let two children show level 2"]) Assert.Contains(words, page.Words());
        Assert.DoesNotContain("Everylevelforamoment", page.Run());
        // A box to tick for each step, and one for each thing to have there.
        Assert.Contains("Everylevelforamoment", Only(CardLessons.ShortLesson(), LessonPlans.None, CardLessons.English).Run());
        Assert.DoesNotContain("Aims", Only(CardLessons.ShortLesson(), LessonPlans.None, CardLessons.English).Words());
    }

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public void Of_TaskOfTheLibrary_SaysWhatMayBeSeenAndAskedInTheLanguage(string language)
    {
        var design = TaskLibrary.Designs.First(d => d.Words["en"].Errors.Count >= 2);
        var record = PaperLessons.Of(3, SheetTask.Of(design.ToTask(language, Guid.Empty), design.ToTask(language, Guid.Empty).Levels));
        var run = string.Concat(LessonPage.Of(record, LessonPlans.None, language == "en" ? CardLessons.English : CardLessons.Spanish).Select(PageText.Run));
        foreach (var error in design.Words[language].Errors.Take(3))
        {
            Assert.Contains(error.Seen.Replace(" ", ""), run);
            Assert.Contains(error.Question.Replace(" ", ""), run);
        }
    }

    [Fact]
    public void Of_OwnDesignOfATask_IsAskedBeforeTheLibrarys()
    {
        var design = TaskLibrary.Designs[0];
        var own = design with { Words = new Dictionary<string, TaskWords> { ["en"] = design.Words["en"] with { Errors = [new("The rope hums.", "Fast wrists.", "What do you hear?")] } } };
        var record = PaperLessons.Of(3, SheetTask.Of(design.ToTask("en", Guid.Empty), design.ToTask("en", Guid.Empty).Levels));
        var run = Only(record, LessonPlans.None with { OwnDesigns = [own] }, CardLessons.English).Run();
        Assert.Contains("Whatdoyouhear?", run);
        Assert.DoesNotContain(design.Words["en"].Errors[0].Question.Replace(" ", ""), run);
    }

    // One set each: level 1, one of five tries, cue 2 of four left open, then "same".
    private static LessonRecord Before(LessonRecord record, int pupilCount)
    {
        var task = record.Sheet!.Content.Tasks[0];
        var id = new Guid(77, 0, 0, new byte[8]);
        EntryFact[] facts =
        [
            new Choice(task.Levels[0].Id), .. Enumerable.Range(1, 5).Select(n => new Trial(n == 1)), .. Enumerable.Range(1, 4).Select(n => new CueTick(n, n != 2)), new Decision(NextLevel.Same),
        ];
        return record with
        {
            Lesson = record.Lesson with { Id = id, Date = new DateOnly(2026, 3, 5) },
            Entries = [.. record.Pupils.Take(pupilCount).SelectMany((pupil, p) => facts.Select((fact, i) => new Entry
            {
                SchoolId = record.School.Id, Id = new Guid(9000 + p * 100 + i, 0, 0, new byte[8]), LessonId = id, PupilId = pupil.Id, TaskId = task.TaskId,
                SetNumber = 1, TrialNumber = fact is Trial ? i : null, Fact = fact, Source = EntrySource.Desk, DeviceId = "desk", DeviceSequence = p * 100 + i + 1,
                MadeAt = DateTimeOffset.UnixEpoch.AddSeconds(p * 100 + i),
            }))],
        };
    }

    private static LessonRecord WithPupils(LessonRecord record, int count) => record with { Pupils = PaperLessons.Of(count, PaperLessons.OneFoot).Pupils };

    [Fact]
    public void Of_PolicyForbids_SaysWhatIsNotAllowed()
    {
        var record = PaperLessons.Of(1, PaperLessons.Tripod);
        var page = Only(record, LessonPlans.None, CardLessons.English);
        Assert.Contains("Notallowedhere:weightonthehead,securingapartner.", page.Run());
        Assert.DoesNotContain("Threepointswiththehead", page.Run());
        Assert.DoesNotContain("Weightontheheadonlywhere", page.Run());
    }

    [Fact]
    public void Of_HeadWeightPlanned_SaysTheConditionsAndTheCapWhereTheSheetHasIt()
    {
        var policy = new SafetyPolicy { HeadWeight = PolicyChoice.Planned, HeadConditions = [SafetyCondition.MatsAround], HeadHoldCapS = 4 };
        string RunOf(params SheetTask[] tasks)
        {
            var record = PaperLessons.Of(1, tasks);
            return Only(record with { School = record.School with { Policy = policy } }, LessonPlans.None, CardLessons.English).Run();
        }
        Assert.Contains("Weightontheheadonlywherematslieunderandaround.Holdsofatmost4s.", RunOf(PaperLessons.Tripod));
        Assert.DoesNotContain("Weightonthehead", RunOf(PaperLessons.OneFoot));
    }

    [Fact]
    public void Of_NoPhases_SaysSo() => Assert.Contains("No times are planned for this lesson.", Only(PaperLessons.Of(1, PaperLessons.Throw), LessonPlans.None, CardLessons.English).Words());

    [Fact]
    public void Of_Phases_AreAsWideAsTheyAreLong()
    {
        var page = Only(CardLessons.ShortLesson(), LessonPlans.None, CardLessons.English);
        var bar = page.Shapes.OfType<Box>().Where(b => b.StrokeMm > 0 && b.HeightMm == 6).ToList();
        // 5, 5, 25 and 5 of 40 minutes on 180 mm, by hand.
        Assert.Equal([22.5, 22.5, 112.5, 22.5], bar.Select(b => Math.Round(b.WidthMm, 6)));
    }

    [Fact]
    public void Of_NoFrozenSheet_Throws() =>
        Assert.Throws<ArgumentException>(() => LessonPage.Of(PaperLessons.Of(1, PaperLessons.OneFoot) with { Sheet = null }, LessonPlans.None, CardLessons.English));

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public void Of_ShortLesson_MatchesApproved(string language) => Snapshot.Match(
        Only(CardLessons.ShortLesson(), LessonPlans.None, language == "en" ? CardLessons.English : CardLessons.Spanish).Listing(), Snapshooter.SnapshotNameExtension.Create(language));

    private static Scene Only(LessonRecord record, LessonPlans plans, PaperOptions options) => Assert.Single(LessonPage.Of(record, plans, options));
}
