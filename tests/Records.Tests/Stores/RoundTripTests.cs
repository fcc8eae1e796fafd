using System.Text.Json;
using CsCheck;
using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Records.Roster;
using Slantwise.Records.Schools;

namespace Slantwise.Records.Tests.Stores;

public sealed class RoundTripTests
{
    [Theory, EachDatabase]
    public async Task Save_OneOfEverything_ComesBackEqual(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);

        AssertSame([sample.School], await store.ListSchoolsAsync());
        AssertSame(sample.School, await store.FindSchoolAsync(sample.Id));
        AssertSame([sample.Class], await store.ListClassesAsync(sample.Id));
        AssertSame(sample.Pupils.OrderBy(p => p.Label, StringComparer.OrdinalIgnoreCase), await store.ListPupilsAsync(sample.Id));
        AssertSame(sample.Roster.Enrolments, await store.ListEnrolmentsAsync(sample.Id));
        AssertSame([sample.Restriction], await store.ListRestrictionsAsync(sample.Id));
        AssertSame([sample.Task], await store.ListTasksAsync(sample.Id));
        AssertSame(sample.Task, await store.FindTaskAsync(sample.Id, sample.Task.Id));
        AssertSame([sample.Sheet], await store.ListSheetsAsync(sample.Id));
        AssertSame(sample.Sheet, await store.FindSheetAsync(sample.Id, sample.Sheet.Id));
        AssertSame([sample.Lesson], await store.ListLessonsAsync(sample.Id));
        AssertSame(sample.Lesson, await store.FindLessonAsync(sample.Id, sample.Lesson.Id));
    }

    [Theory, EachDatabase]
    public async Task Save_OverWhatIsThere_Replaces(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        var version = await store.FreezeSheetAsync(sample.Id, sample.Sheet.Id);

        var school = sample.School with { Name = "Renamed", Policy = new SafetyPolicy() };
        var task = sample.Task with { Cues = [], Levels = [sample.Task.Levels[1]] };
        var lesson = sample.Lesson with { Date = new DateOnly(2027, 1, 2), SheetVersion = version.Version, MatCount = null, Phases = [] };
        var restriction = sample.Restriction with { Until = null };
        await store.SaveSchoolAsync(school);
        await store.SaveTaskAsync(task);
        await store.SaveLessonAsync(lesson);
        await store.SaveRestrictionAsync(restriction);

        AssertSame([school], await store.ListSchoolsAsync());
        AssertSame([task], await store.ListTasksAsync(sample.Id));
        AssertSame([lesson], await store.ListLessonsAsync(sample.Id));
        AssertSame([restriction], await store.ListRestrictionsAsync(sample.Id));
        await store.RemoveRestrictionAsync(sample.Id, restriction.Id);
        await store.RemoveRestrictionAsync(sample.Id, restriction.Id);
        Assert.Empty(await store.ListRestrictionsAsync(sample.Id));
    }

    [Theory, EachDatabase]
    public async Task List_EmptyStore_IsEmptyAndFindsNothing(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, id) = (test.Store, SampleSchool.IdOf(1));
        Assert.Empty(await store.ListSchoolsAsync());
        Assert.Empty(await store.ListClassesAsync(id));
        Assert.Empty(await store.ListPupilsAsync(id));
        Assert.Empty(await store.ListClassPupilsAsync(id, id));
        Assert.Empty(await store.ListEntriesAsync(id, id));
        Assert.Null(await store.FindSchoolAsync(id));
        Assert.Null(await store.FindTaskAsync(id, id));
        Assert.Null(await store.FindSheetAsync(id, id));
        Assert.Null(await store.FindSheetVersionAsync(id, id, 1));
        Assert.Null(await store.FindLessonAsync(id, id));
    }

    [Theory, EachDatabase]
    public async Task Append_EntriesOfEveryKind_ComeBackEqualInOrder(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        var appended = new List<Entry>();
        var kinds = new HashSet<Type>();
        await EntryGen.Of(sample).Array[1, 40].SampleAsync(async batch =>
        {
            var receivedFrom = test.Clock.Now;
            var outcome = await store.AppendEntriesAsync(sample.Id, batch);
            Assert.Equal(batch.Select(e => e.Id), outcome.AddedIds);
            appended.AddRange(batch);
            kinds.UnionWith(batch.Select(e => e.Fact.GetType()));

            var listed = await store.ListEntriesAsync(sample.Id, sample.Lesson.Id);
            Assert.Equal(appended, listed.Select(e => e with { ReceivedAt = null }));
            Assert.All(listed.TakeLast(batch.Length), e => Assert.InRange(e.ReceivedAt!.Value, receivedFrom, test.Clock.Now));
        }, iter: 30, threads: 1);
        Assert.Equal(typeof(EntryFact).Assembly.GetTypes().Count(t => t.IsSubclassOf(typeof(EntryFact))), kinds.Count);
    }

    [Theory, EachDatabase]
    public async Task List_ByNameAndLabel_IgnoresCaseAndEndsTiesByCode(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await store.SaveSchoolAsync(sample.School);
        var names = new (string Code, string? Name)[] { ("Z9", "ben"), ("B2", "Ana"), ("a1", "ana"), ("C3", null), ("D4", "Élise"), ("E5", "Zoe") };
        var pupils = names.Select((n, i) => new Pupil { SchoolId = sample.Id, Id = SampleSchool.IdOf(i), Code = n.Code, DisplayName = n.Name }).ToList();
        var classes = new[] { "8a", "7B", "7a" }.Select((n, i) => new SchoolClass { SchoolId = sample.Id, Id = SampleSchool.IdOf(i), Name = n }).ToList();
        var enrolments = pupils.Select(p => new Enrolment { SchoolId = sample.Id, ClassId = classes[0].Id, PupilId = p.Id, IsCurrent = p.Code != "Z9" }).ToList();
        await store.SaveRosterAsync(sample.Id, new RosterSave { Classes = classes, Pupils = pupils, Enrolments = enrolments });

        Assert.Equal(["7a", "7B", "8a"], (await store.ListClassesAsync(sample.Id)).Select(c => c.Name));
        Assert.Equal(["a1", "B2", "Z9", "C3", "E5", "D4"], (await store.ListPupilsAsync(sample.Id)).Select(p => p.Code));
        Assert.Equal(["a1", "B2", "C3", "E5", "D4"], (await store.ListClassPupilsAsync(sample.Id, classes[0].Id)).Select(p => p.Code));
        Assert.Empty(await store.ListClassPupilsAsync(sample.Id, classes[1].Id));
    }

    [Theory, EachDatabase]
    public async Task ListLessons_OfSeveralDays_EarliestFirst(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        foreach (var day in new[] { 20, 3, 28 })
            await store.SaveLessonAsync(sample.Lesson with { Id = SampleSchool.IdOf(day), Date = new DateOnly(2026, 9, day) });
        Assert.Equal([3, 14, 20, 28], (await store.ListLessonsAsync(sample.Id)).Select(l => l.Date.Day));
    }

    [Theory, EachDatabase]
    public async Task Save_WithoutItsParent_SaysWhichIsMissing(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        Assert.Contains("no such school", (await Assert.ThrowsAsync<ArgumentException>(() => store.SaveTaskAsync(sample.Task))).Message);
        Assert.Contains("no such school", (await Assert.ThrowsAsync<ArgumentException>(() => store.SaveSheetAsync(sample.Sheet))).Message);
        Assert.Contains("pupil", (await Assert.ThrowsAsync<ArgumentException>(() => store.SaveRestrictionAsync(sample.Restriction))).Message);
        await sample.SaveToAsync(store);
        foreach (var lesson in new[]
        {
            sample.Lesson with { ClassId = SampleSchool.IdOf(7) },
            sample.Lesson with { SheetId = SampleSchool.IdOf(7) },
            sample.Lesson with { SheetVersion = 3 },
        })
            Assert.Contains("sheet version", (await Assert.ThrowsAsync<ArgumentException>(() => store.SaveLessonAsync(lesson))).Message);
        AssertSame([sample.Lesson], await store.ListLessonsAsync(sample.Id));
    }

    [Theory, EachDatabase]
    public async Task Save_TextNoDatabaseKeeps_IsRefusedByBoth(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        foreach (var name in new[] { "a\0b", "half \uD83E", "\uDD38 half" })
            Assert.Contains("name", (await Assert.ThrowsAsync<ArgumentException>(() => store.SaveSchoolAsync(sample.School with { Name = name }))).Message);
        var entry = sample.Trial(1) with { Fact = new Trial(true, double.NaN) };
        Assert.Contains("held_s", (await Assert.ThrowsAsync<ArgumentException>(() => store.AppendEntriesAsync(sample.Id, [sample.Trial(2), entry]))).Message);
        Assert.Empty(await store.ListEntriesAsync(sample.Id, sample.Lesson.Id));
        AssertSame([sample.School], await store.ListSchoolsAsync());
    }

    [Theory, EachDatabase]
    public async Task LessonRecord_LoadedFromAStore_HoldsEverythingOfTheLesson(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        var version = await store.FreezeSheetAsync(sample.Id, sample.Sheet.Id);
        await store.SaveLessonAsync(sample.Lesson with { SheetVersion = version.Version });
        await store.AppendEntriesAsync(sample.Id, [sample.Trial(1)]);

        var record = await LessonRecord.LoadAsync(store, sample.Id, sample.Lesson.Id);
        Assert.NotNull(record);
        AssertSame(version, record.Sheet);
        Assert.Equal(3, record.Pupils.Count);
        Assert.Single(record.Restrictions);
        Assert.Single(record.Entries);
    }

    // Records hold lists, which compare by reference: their JSON says what is in them.
    internal static void AssertSame<T>(T expected, T actual) => Assert.Equal(JsonSerializer.Serialize(expected), JsonSerializer.Serialize(actual));

    internal static void AssertSame<T>(IEnumerable<T> expected, IReadOnlyList<T> actual) =>
        Assert.Equal(expected.Select(e => JsonSerializer.Serialize(e)), actual.Select(e => JsonSerializer.Serialize(e)));
}
