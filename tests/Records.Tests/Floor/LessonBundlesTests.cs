using System.Globalization;
using System.Text;
using System.Text.Json;
using CsCheck;
using Slantwise.Records.Entries;
using Slantwise.Records.Entries.Files;
using Slantwise.Records.Floor;
using Slantwise.Records.Floor.Contracts;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Files;
using static Slantwise.Records.Tests.Entries.InventedLesson;

namespace Slantwise.Records.Tests.Floor;

public sealed class LessonBundlesTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en");
    private static readonly CultureInfo Spanish = CultureInfo.GetCultureInfo("es");

    private static LessonRecord LibraryLesson(CultureInfo language, params string[] files) => Taught with
    {
        Sheet = Taught.Sheet! with
        {
            Content = Towers with { Tasks = [.. TaskLibrary.Read(language, SchoolId).Where(r => files.Contains(r.FileName)).Select(r => SheetTask.Of(r.Task!, r.Task!.Levels))] },
        },
    };

    [Fact]
    public void Of_LessonWithoutASheet_Throws()
    {
        var thrown = Assert.Throws<InvalidOperationException>(() => LessonBundles.Of(Taught with { Sheet = null }, FloorDeviceKind.Board, [], English));
        Assert.Contains("sheet", thrown.Message);
    }

    [Fact]
    public void Of_WrongPupilsForTheKind_Throws()
    {
        (FloorDeviceKind Kind, Guid[] Pupils)[] wrong =
        [
            (FloorDeviceKind.Pupil, []), (FloorDeviceKind.Pupil, [Alba.Id, Bruno.Id]), (FloorDeviceKind.Pupil, [Id(99)]), (FloorDeviceKind.Pair, []),
            (FloorDeviceKind.Pair, [Alba.Id, Alba.Id]), (FloorDeviceKind.Pair, [Alba.Id, Bruno.Id, Carys.Id]), (FloorDeviceKind.Station, [Alba.Id]),
            (FloorDeviceKind.Teacher, [Alba.Id]), (FloorDeviceKind.Board, [Alba.Id]),
        ];
        Assert.All(wrong, w => Assert.Throws<ArgumentException>(() => LessonBundles.Of(Taught, w.Kind, w.Pupils, English)));
    }

    [Fact]
    public void Of_PairOfWhomOneIsRestricted_ShowsTheLevelAndOffersItToTheOtherOnly()
    {
        var record = Taught with { Restrictions = [new() { SchoolId = SchoolId, Id = Id(5), PupilId = Alba.Id, Without = BodyDemand.Inversion }] };
        var pair = LessonBundles.Of(record, FloorDeviceKind.Pair, [Bruno.Id, Alba.Id], English);
        Assert.Equal(["Alba", "Bruno"], pair.Pupils.Select(p => p.Label));
        Assert.Equal(BalanceLevels.Select(l => l.Id), pair.Tasks[0].Levels.Select(l => l.LevelId));
        Assert.Equal(BalanceLevels.Take(3).Select(l => l.Id), pair.Pupils[0].Offers[0].LevelIds);
        Assert.Equal(BalanceLevels.Select(l => l.Id), pair.Pupils[1].Offers[0].LevelIds);
        var own = LessonBundles.Of(record, FloorDeviceKind.Pupil, [Alba.Id], English);
        Assert.Equal(BalanceLevels.Take(3).Select(l => l.Id), own.Tasks[0].Levels.Select(l => l.LevelId));
    }

    [Fact]
    public void Of_NothingLeftOfATask_KeepsTheTaskWithoutALevel()
    {
        var record = Taught with { Restrictions = [new() { SchoolId = SchoolId, Id = Id(5), PupilId = Alba.Id, Without = BodyDemand.Impact }] };
        var own = LessonBundles.Of(record, FloorDeviceKind.Pupil, [Alba.Id], English);
        Assert.Equal([4, 0], own.Tasks.Select(t => t.Levels.Count));
        Assert.Equal([4, 0], own.Pupils.Single().Offers.Select(o => o.LevelIds.Count));
    }

    [Fact]
    public void Of_AdaptationOfOnePupil_IsInTheirOfferOnPupilsDevicesAndNowhereElse()
    {
        const string Own = "One hand on the wall";
        var record = Taught with { Adaptations = [new() { SchoolId = SchoolId, PupilId = Alba.Id, TaskId = Towers.Tasks[0].TaskId, Text = Own }] };
        foreach (var (kind, ids) in ((FloorDeviceKind, Guid[])[])[(FloorDeviceKind.Pupil, [Alba.Id]), (FloorDeviceKind.Pair, [Alba.Id, Bruno.Id]), (FloorDeviceKind.Station, [])])
        {
            var bundle = LessonBundles.Of(record, kind, ids, English);
            var offer = Assert.Single(bundle.Pupils.SelectMany(p => p.Offers.Select(o => (p.PupilId, o.TaskId, o.Adaptation))), o => o.Adaptation is not null);
            Assert.Equal((Alba.Id, Towers.Tasks[0].TaskId, Own), offer);
            Assert.Equal(2, JsonSerializer.Serialize(bundle).Split(Own).Length);
        }
        foreach (var (kind, ids) in ((FloorDeviceKind, Guid[])[])[(FloorDeviceKind.Pupil, [Bruno.Id]), (FloorDeviceKind.Teacher, []), (FloorDeviceKind.Board, [])])
            Assert.DoesNotContain(Own, JsonSerializer.Serialize(LessonBundles.Of(record, kind, ids, English)), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_TeachersDevice_HasThePlannedPhasesAndNoOtherHas()
    {
        var record = Taught with { Lesson = Taught.Lesson with { Phases = [new(PhaseKind.Instruction, 5, "Show"), new(PhaseKind.Activity, 25, "")] } };
        Assert.Equal([new(PhaseKind.Instruction, 5, "Show"), new(PhaseKind.Activity, 25, "")], LessonBundles.Of(record, FloorDeviceKind.Teacher, [], English).Phases);
        Assert.Empty(LessonBundles.Of(record, FloorDeviceKind.Pupil, [Alba.Id], English).Phases);
        Assert.Empty(LessonBundles.Of(record, FloorDeviceKind.Board, [], English).Phases);
    }

    [Fact]
    public void Of_TaskOfTheLibrary_IsTranslatedWholeWithTheSheetsOwnDose()
    {
        var record = LibraryLesson(English, "frog-balance.json");
        var task = record.Sheet!.Content.Tasks[0];
        var changed = task with { Levels = [.. task.Levels.Skip(1).Select(l => l with { Dose = new Dose(DoseKind.HoldS, 9.5m) })] };
        var bundle = LessonBundles.Of(WithTasks(record, changed), FloorDeviceKind.Teacher, [], English);
        var translation = Assert.Single(bundle.Translations);
        var own = TaskLibrary.Read(Spanish, SchoolId).Single(r => r.FileName == "frog-balance.json").Task!;
        Assert.Equal("es", translation.Language);
        Assert.Equal((own.Id, own.Name, own.Purpose, own.Caution), (translation.Tasks[0].TaskId, translation.Tasks[0].Name, translation.Tasks[0].Purpose, translation.Tasks[0].Caution));
        Assert.Equal(own.Cues, translation.Tasks[0].Cues);
        Assert.Equal(own.Levels.Skip(1).Select(l => (l.Id, l.Name, 9.5m)), translation.Tasks[0].Levels.Select(l => (l.LevelId, l.Name, l.DoseAmount)));
        Assert.Equal(bundle.Figures.Select(f => f.Key), translation.FigureDescriptions.Keys.Order(StringComparer.Ordinal));
        Assert.All(bundle.Figures, f => Assert.NotEqual(f.Description, translation.FigureDescriptions[f.Key]));
    }

    [Fact]
    public void Of_TaskWithAnyWordChanged_IsNotTranslated()
    {
        var record = LibraryLesson(English, "frog-balance.json");
        var task = record.Sheet!.Content.Tasks[0];
        SheetTask[] changes =
        [
            task with { Name = task.Name + "!" }, task with { Purpose = task.Purpose + " Now." }, task with { Caution = task.Caution + " Mats." },
            task with { Cues = [.. task.Cues.Skip(1)] }, task with { Levels = [.. task.Levels.Take(2), task.Levels[2] with { Name = "my own way" }] },
            task with { Levels = [.. task.Levels, task.Levels[0] with { Id = Id(77) }] }, task with { TaskId = Id(78) },
        ];
        Assert.All(changes, t => Assert.DoesNotContain(
            LessonBundles.Of(WithTasks(record, t), FloorDeviceKind.Teacher, [], English).Translations, translation => translation.Tasks.Count > 0));
    }

    [Fact]
    public void Of_SheetOfTheLibraryInSpanish_IsTranslatedIntoEnglish()
    {
        var bundle = LessonBundles.Of(LibraryLesson(Spanish, "target-throw.json"), FloorDeviceKind.Board, [], Spanish);
        Assert.Equal(["en"], bundle.Translations.Select(t => t.Language));
        Assert.Equal(TaskLibrary.Read(English, SchoolId).Single(r => r.FileName == "target-throw.json").Task!.Name, bundle.Translations[0].Tasks.Single().Name);
    }

    [Fact]
    public void Of_AnyDevice_GivesEntriesByItsKind()
    {
        var recorder = RecorderOf(Taught, EntrySource.Floor);
        var choice = recorder.Put(Alba.Id, BalanceId, 1, null, new Choice(BalanceLevels[0].Id))!;
        var corrected = recorder.Put(Alba.Id, BalanceId, 1, null, new Choice(BalanceLevels[1].Id))!;
        var others = recorder.Put(Bruno.Id, BalanceId, 1, null, new Choice(BalanceLevels[0].Id))!;
        var visit = recorder.Put(Alba.Id, BalanceId, null, null, new Visit(VisitTopic.Cue, VisitForm.Asked))!;
        var check = recorder.Put(Alba.Id, BalanceId, 1, null, new TeacherCheck(1, true, true))!;
        var note = recorder.Put(Alba.Id, null, null, null, new Note("left arm"))!;
        var phase = recorder.Put(null, null, null, null, new PhaseMark(PhaseKind.Activity))!;
        var back = recorder.TakeBack(EntrySlot.Of(check))!;
        var left = recorder.Put(Id(60), null, null, null, new Presence(true))!;
        var record = Taught.With(choice, corrected, others, visit, check, note, phase, back, left);
        Assert.Equal([choice, corrected], LessonBundles.Of(record, FloorDeviceKind.Pupil, [Alba.Id], English).Entries);
        Assert.Equal([choice, corrected, others], LessonBundles.Of(record, FloorDeviceKind.Pair, [Alba.Id, Bruno.Id], English).Entries);
        Assert.Empty(LessonBundles.Of(record, FloorDeviceKind.Station, [], English).Entries);
        Assert.Empty(LessonBundles.Of(record, FloorDeviceKind.Board, [], English).Entries);
        Assert.Equal([choice, corrected, others, visit, check, note, phase, back], LessonBundles.Of(record, FloorDeviceKind.Teacher, [], English).Entries);
    }

    [Fact]
    public void Of_EntryCorrectedByOneAboutAnother_DoesNotSeemToHold()
    {
        var recorder = RecorderOf(Taught);
        var first = recorder.Put(Alba.Id, BalanceId, 1, null, new Choice(BalanceLevels[0].Id))!;
        var second = recorder.Put(Alba.Id, BalanceId, 1, null, new Choice(BalanceLevels[1].Id))!;
        // Typed for the wrong pupil: the correction is about somebody else.
        var moved = RecorderOf(Taught).Put(Bruno.Id, BalanceId, 1, null, new Choice(BalanceLevels[1].Id))! with { SupersedesId = second.Id, DeviceSequence = 3 };
        var record = Taught.With(first, second, moved);
        Assert.Empty(LessonBundles.Of(record, FloorDeviceKind.Pupil, [Alba.Id], English).Entries);
        Assert.Equal([moved], EntryLog.Current(LessonBundles.Of(record, FloorDeviceKind.Pupil, [Bruno.Id], English).Entries));
    }

    [Fact]
    public void Of_WholeLibrary_FiguresAreSmallWholeDocumentsEachOnce()
    {
        var bundle = LessonBundles.Of(LibraryLesson(English, "arabesque.json", "frog-balance.json", "v-sit.json"), FloorDeviceKind.Teacher, [], English);
        Assert.True(bundle.Figures.Count > 5, "Three tasks of the library show more than five postures.");
        Assert.Equal(bundle.Figures.Count, bundle.Figures.DistinctBy(f => f.Key).Count());
        // Our own bound: a class takes its bundles over a hall's wifi, all at the same moment.
        Assert.InRange(bundle.Figures.Sum(f => Encoding.UTF8.GetByteCount(f.Svg)), 1, 15_000 * bundle.Figures.Count);
        Assert.All(bundle.Figures, f =>
        {
            Assert.Equal("svg", System.Xml.Linq.XDocument.Parse(f.Svg).Root!.Name.LocalName);
            Assert.NotEmpty(f.Description);
            Assert.DoesNotContain("<text", f.Svg);
        });
    }

    [Fact]
    public void Of_AnyRestrictionsPolicyAndDay_LeavesNothingRemovedAndAllThatIsOffered() => BundleGen.Lessons.Sample(record =>
    {
        var sheet = record.Sheet!.Content;
        foreach (var (kind, pupils) in BundleGen.Devices(record))
        {
            var bundle = LessonBundles.Of(record, kind, [.. pupils.Where(_ => kind is FloorDeviceKind.Pupil or FloorDeviceKind.Pair).Select(p => p.Id)], English);
            var text = JsonSerializer.Serialize(bundle, EntryJson.Options);
            Assert.Equal(pupils.Select(p => p.Id), bundle.Pupils.Select(p => p.PupilId));
            Assert.Equal(sheet.Tasks.Select(t => t.TaskId), bundle.Tasks.Select(t => t.TaskId));
            foreach (var (pupil, served) in pupils.Zip(bundle.Pupils))
            {
                Assert.Equal(
                    sheet.Tasks.Select(t => (t.TaskId, string.Join(' ', t.Levels.Where(l => BundleGen.IsLeft(record, l, pupil)).Select(l => l.Id)))),
                    served.Offers.Select(o => (o.TaskId, string.Join(' ', o.LevelIds))));
            }

            var shown = sheet.Tasks.SelectMany(t => t.Levels)
                .Where(l => kind == FloorDeviceKind.Board ? BundleGen.IsLeft(record, l, null) : pupils.Any(p => BundleGen.IsLeft(record, l, p))).ToList();
            Assert.Equal(shown.Select(l => (l.Id, l.Name)), bundle.Tasks.SelectMany(t => t.Levels).Select(l => (l.LevelId, l.Name)));
            Assert.Equal(shown.Select(l => l.Posture), bundle.Tasks.SelectMany(t => t.Levels).Select(l => l.FigureKey));
            Assert.Equal(shown.Select(l => l.Posture).OfType<string>().Distinct().Order(StringComparer.Ordinal), bundle.Figures.Select(f => f.Key));
            foreach (var translation in bundle.Translations)
            {
                Assert.Equal(bundle.Figures.Select(f => f.Key), translation.FigureDescriptions.Keys.Order(StringComparer.Ordinal));
                Assert.All(translation.Tasks, task => Assert.Equal(
                    bundle.Tasks.Single(t => t.TaskId == task.TaskId).Levels.Select(l => (l.LevelId, l.FigureKey, l.DoseAmount)), task.Levels.Select(l => (l.LevelId, l.FigureKey, l.DoseAmount))));
            }

            // The whole text, whatever part it may stand in: ids and postures of removed levels, and pupils who are not the device's.
            Assert.All(sheet.Tasks.SelectMany(t => t.Levels).Except(shown), l => Assert.DoesNotContain(l.Id.ToString(), text));
            Assert.All(
                sheet.Tasks.SelectMany(t => t.Levels).Except(shown).Select(l => l.Posture).OfType<string>().Except(shown.Select(l => l.Posture)),
                key => Assert.DoesNotContain($"\"{key}\"", text));
            Assert.All(record.Pupils.Except(pupils), p =>
            {
                Assert.DoesNotContain(p.Id.ToString(), text);
                Assert.DoesNotContain($"\"{p.Label}\"", text);
            });
            if (kind == FloorDeviceKind.Board) Assert.DoesNotContain("pupilId", text);
            Assert.All(record.Restrictions, r => Assert.DoesNotContain(r.Id.ToString(), text));
        }
    }, iter: 60);

    private static LessonRecord WithTasks(LessonRecord record, params SheetTask[] tasks) =>
        record with { Sheet = record.Sheet! with { Content = record.Sheet.Content with { Tasks = tasks } } };
}
