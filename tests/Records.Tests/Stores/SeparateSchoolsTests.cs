using CsCheck;
using Slantwise.Records.Entries;
using Slantwise.Records.Schools;
using static Slantwise.Records.Tests.Stores.RoundTripTests;

namespace Slantwise.Records.Tests.Stores;

public sealed class SeparateSchoolsTests
{
    // The hardest case on purpose: both schools use the same ids, codes and names for everything.
    [Theory, EachDatabase]
    public async Task EveryCall_TwoSchoolsWithTheSameIds_SeesItsOwnRowsOnly(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var store = test.Store;
        var (ours, theirs) = (new SampleSchool(number: 1), new SampleSchool(number: 2));
        await ours.SaveToAsync(store);
        await theirs.SaveToAsync(store);
        var (ourLog, theirLog) = (new List<Entry>(), new List<Entry>());
        await Gen.Select(EntryGen.Of(ours).Array[1, 12], Gen.Bool, Gen.String[Gen.Char['a', 'z'], 1, 12]).SampleAsync(async (batch, isOurs, text) =>
        {
            var (school, log) = isOurs ? (ours, ourLog) : (theirs, theirLog);
            // Half of the entries under ids the other school uses already.
            var taken = (isOurs ? theirLog : ourLog).Select(e => e.Id).Except(log.Select(e => e.Id)).Take(batch.Length / 2).ToList();
            var entries = batch.Select((e, i) => e with { SchoolId = school.Id, Id = i < taken.Count ? taken[i] : e.Id }).ToList();
            Assert.Equal(entries.Count, (await store.AppendEntriesAsync(school.Id, entries)).AddedIds.Count);
            log.AddRange(entries);
            await store.SaveTaskAsync(school.Task with { Name = text });
            await store.SaveLessonAsync(school.Lesson with { Title = text });
            await store.SaveRosterAsync(school.Id, new() { Pupils = [school.Pupils[0] with { DisplayName = text }] });

            Assert.Equal(ourLog, (await store.ListEntriesAsync(ours.Id, ours.Lesson.Id)).Select(e => e with { ReceivedAt = null }));
            Assert.Equal(theirLog, (await store.ListEntriesAsync(theirs.Id, theirs.Lesson.Id)).Select(e => e with { ReceivedAt = null }));
            Assert.Equal(text, (await store.FindTaskAsync(school.Id, school.Task.Id))!.Name);
            foreach (var each in new[] { ours, theirs })
            {
                Assert.All(await store.ListTasksAsync(each.Id), t => Assert.Equal(each.Id, t.SchoolId));
                Assert.All(await store.ListLessonsAsync(each.Id), l => Assert.Equal(each.Id, l.SchoolId));
                Assert.All(await store.ListPupilsAsync(each.Id), p => Assert.Equal(each.Id, p.SchoolId));
                Assert.Equal(4, (await store.ListPupilsAsync(each.Id)).Count);
                Assert.Equal(3, (await store.ListClassPupilsAsync(each.Id, each.Class.Id)).Count);
            }
        }, iter: 20, threads: 1);

        await store.FreezeSheetAsync(ours.Id, ours.Sheet.Id);
        Assert.Null(await store.FindSheetVersionAsync(theirs.Id, theirs.Sheet.Id, 1));
        await store.ErasePupilAsync(ours.Id, ours.Pupils[0].Id);
        await store.RemoveRestrictionAsync(ours.Id, ours.Restriction.Id);
        Assert.Equal(theirLog, (await store.ListEntriesAsync(theirs.Id, theirs.Lesson.Id)).Select(e => e with { ReceivedAt = null }));
        Assert.Equal(4, (await store.ListEnrolmentsAsync(theirs.Id)).Count);
        AssertSame(theirs.Restriction, (await store.ListRestrictionsAsync(theirs.Id)).Single());
    }

    [Theory, EachDatabase]
    public async Task Save_ParentOfAnotherSchool_IsAsGoodAsNone(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var store = test.Store;
        var (ours, theirs) = (new SampleSchool(number: 1, idsFrom: 1), new SampleSchool(number: 2, idsFrom: 2));
        await ours.SaveToAsync(store);
        await theirs.SaveToAsync(store);
        await Assert.ThrowsAsync<ArgumentException>(() => store.SaveLessonAsync(ours.Lesson with { ClassId = theirs.Class.Id }));
        await Assert.ThrowsAsync<ArgumentException>(() => store.SaveLessonAsync(ours.Lesson with { SheetId = theirs.Sheet.Id }));
        await Assert.ThrowsAsync<ArgumentException>(() => store.SaveRestrictionAsync(ours.Restriction with { PupilId = theirs.Pupils[0].Id }));
        await Assert.ThrowsAsync<ArgumentException>(() => store.AppendEntriesAsync(ours.Id, [ours.Trial(1) with { LessonId = theirs.Lesson.Id }]));
        await Assert.ThrowsAsync<ArgumentException>(() => store.AppendEntriesAsync(ours.Id, [ours.Trial(1) with { PupilId = theirs.Pupils[0].Id }]));
        await Assert.ThrowsAsync<ArgumentException>(() => store.SaveRosterAsync(ours.Id,
            new() { Enrolments = [new Enrolment { SchoolId = ours.Id, ClassId = ours.Class.Id, PupilId = theirs.Pupils[0].Id }] }));
        await Assert.ThrowsAsync<InvalidOperationException>(() => store.FreezeSheetAsync(ours.Id, theirs.Sheet.Id));
    }
}
