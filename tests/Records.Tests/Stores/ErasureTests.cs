using System.Text;
using Slantwise.Records.Entries;
using Slantwise.Records.Floor;
using Slantwise.Records.Schools;

namespace Slantwise.Records.Tests.Stores;

public sealed class ErasureTests
{
    [Theory, EachDatabase]
    public async Task ErasePupil_WithEntries_LeavesNothingOfThePupilAndAllOfTheOthers(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        await store.AppendEntriesAsync(sample.Id, [sample.Trial(1, pupil: 0), sample.Trial(2, pupil: 1), sample.Trial(3, pupil: 0) with { PupilId = null }]);
        var (erased, kept) = (sample.Pupils[0], sample.Pupils[1]);
        await store.SaveRestrictionAsync(sample.Restriction with { Id = SampleSchool.IdOf(9), PupilId = kept.Id });

        await store.ErasePupilAsync(sample.Id, erased.Id);

        Assert.DoesNotContain(await store.ListPupilsAsync(sample.Id), p => p.Id == erased.Id);
        Assert.Equal(3, (await store.ListPupilsAsync(sample.Id)).Count);
        Assert.DoesNotContain(await store.ListEnrolmentsAsync(sample.Id), e => e.PupilId == erased.Id);
        Assert.Equal([kept.Id], (await store.ListRestrictionsAsync(sample.Id)).Select(r => r.PupilId));
        Assert.Equal([kept.Id, null], (await store.ListEntriesAsync(sample.Id, sample.Lesson.Id)).Select(e => e.PupilId));
    }

    [Theory, EachDatabase]
    public async Task ErasePupil_ThenALateEntry_IsRefused(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        await store.ErasePupilAsync(sample.Id, sample.Pupils[0].Id);
        await store.ErasePupilAsync(sample.Id, sample.Pupils[0].Id);
        var refused = await Assert.ThrowsAsync<ArgumentException>(() => store.AppendEntriesAsync(sample.Id, [sample.Trial(1, pupil: 0)]));
        Assert.Contains(sample.Pupils[0].Id.ToString(), refused.Message);
    }

    [Theory, EachDatabase]
    public async Task ErasePupil_WhileEntriesArrive_LeavesNone(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        var appended = new TaskCompletionSource();
        var writer = Task.Run(async () =>
        {
            for (var i = 0; ; i++)
            {
                try
                {
                    await store.AppendEntriesAsync(sample.Id, [sample.Trial(i, pupil: 0)]);
                }
                catch (ArgumentException)
                {
                    return i;
                }
                if (i == 5) appended.SetResult();
            }
        });
        await appended.Task;
        await store.ErasePupilAsync(sample.Id, sample.Pupils[0].Id);
        Assert.True(await writer > 5, "Some entries came before.");
        Assert.Empty(await store.ListEntriesAsync(sample.Id, sample.Lesson.Id));
    }

    [Fact]
    public async Task ErasePupil_OnSqlite_LeavesNoReadableByteInTheFolder()
    {
        await using var test = await TestStore.OpenAsync(Database.Sqlite);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        var pupil = new Pupil { SchoolId = sample.Id, Id = SampleSchool.IdOf(9), Code = "QX7", DisplayName = "Wilhelmina Vexler" };
        await store.SaveRosterAsync(sample.Id, new() { Pupils = [pupil] });
        await store.SaveRosterAsync(sample.Id, new() { Pupils = [pupil with { DisplayName = "Wilhelmina Vexler the Second" }] });
        await store.AppendEntriesAsync(sample.Id, [sample.Trial(1) with { PupilId = pupil.Id, Fact = new Decision(NextLevel.Harder, "felt wobbly as Vexler") }]);
        await store.SaveFloorLessonAsync(new() { SchoolId = sample.Id, LessonId = sample.Lesson.Id, Code = "K7PM4X", CodeUntil = test.Clock.GetUtcNow(), OpenedAt = test.Clock.GetUtcNow() });
        await store.SaveFloorDeviceAsync(new()
        {
            SchoolId = sample.Id, LessonId = sample.Lesson.Id, DeviceId = "a-1", Kind = FloorDeviceKind.Pupil, Name = "1", JoinedAt = test.Clock.GetUtcNow(),
            PupilIds = [pupil.Id], ServedPupilIds = [pupil.Id],
        });
        Assert.True(HasBytes(test, "Vexler"), "The name is somewhere before it is erased.");

        await store.ErasePupilAsync(sample.Id, pupil.Id);

        Assert.False(HasBytes(test, "Vexler"), "A name or reason is still readable in the store's files.");
        Assert.False(HasBytes(test, pupil.Id.ToString()), "The pupil's id is still readable in the store's files.");
    }

    private static bool HasBytes(TestStore test, string text) => Directory.EnumerateFiles(test.Folder).Any(file =>
    {
        using var stream = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes.AsSpan().IndexOf(Encoding.UTF8.GetBytes(text)) >= 0;
    });
}
