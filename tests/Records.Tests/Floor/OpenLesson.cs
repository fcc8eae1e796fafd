using System.Globalization;
using Slantwise.Records.Entries;
using Slantwise.Records.Floor;
using Slantwise.Records.Floor.Contracts;
using Slantwise.Records.Tests.Stores;

namespace Slantwise.Records.Tests.Floor;

/// <summary>The sample school's lesson, opened for devices in a hub of its own.</summary>
internal sealed class OpenLesson : IAsyncDisposable
{
    private readonly Dictionary<string, long> _sequences = [];
    private readonly Func<int, int> _draw = Draws();

    private OpenLesson(TestStore test, IStore store)
    {
        Test = test;
        Store = store;
        Hub = NewHub();
    }

    public TestStore Test { get; }
    public IStore Store { get; }
    public FloorHub Hub { get; private set; }
    public SampleSchool School { get; } = new();
    public FloorLesson Lesson { get; private set; } = null!;
    public ManualClock Clock => Test.Clock;

    public Guid LessonId => School.Lesson.Id;

    public static async Task<OpenLesson> OpenAsync(Database database, Func<IStore, IStore>? around = null)
    {
        var test = await TestStore.OpenAsync(database);
        var open = new OpenLesson(test, around?.Invoke(test.Store) ?? test.Store);
        await open.School.SaveToAsync(test.Store);
        open.Lesson = await open.Hub.OpenAsync(open.School.Id, open.LessonId);
        return open;
    }

    /// <summary>Ends the hub, as a program ends, and starts another over the same store.</summary>
    public async Task RestartAsync()
    {
        await Hub.DisposeAsync();
        Hub = NewHub();
    }

    public Task<FloorMember> JoinAsync(string deviceId, FloorDeviceKind kind = FloorDeviceKind.Pupil) =>
        Hub.JoinAsync(School.Id, LessonId, new JoinRequest(deviceId, kind));

    /// <summary>A pupil's device that serves the n-th pupil.</summary>
    public async Task<FloorMember> PupilAsync(string deviceId, int pupil)
    {
        var member = await JoinAsync(deviceId);
        await member.ClaimAsync(new ClaimRequest([School.Pupils[pupil].Id]));
        return member;
    }

    /// <summary>The next entry of a device.</summary>
    public Entry Entry(string deviceId, int? pupil, EntryFact fact, int? trial = null, Guid? supersedes = null)
    {
        var sequence = _sequences[deviceId] = _sequences.GetValueOrDefault(deviceId) + 1;
        var isAboutLesson = pupil is null || fact is Presence;
        return new()
        {
            SchoolId = School.Id,
            Id = EntryId.New(Clock),
            LessonId = LessonId,
            PupilId = pupil is { } n ? School.Pupils[n].Id : null,
            TaskId = isAboutLesson ? null : School.Task.Id,
            SetNumber = isAboutLesson ? null : 1,
            TrialNumber = trial,
            Fact = fact,
            Source = EntrySource.Floor,
            DeviceId = deviceId,
            DeviceSequence = sequence,
            MadeAt = Clock.Now,
            SupersedesId = supersedes,
        };
    }

    public static Task<BatchAnswer> TakeAsync(FloorMember member, params IReadOnlyList<Entry> entries) =>
        member.TakeAsync(new EntryBatch(entries, entries.Count), CultureInfo.InvariantCulture);

    public Task<IReadOnlyList<Entry>> KeptAsync() => Test.Store.ListEntriesAsync(School.Id, LessonId);

    public async ValueTask DisposeAsync()
    {
        await Hub.DisposeAsync();
        await Test.DisposeAsync();
    }

    /// <summary>Draws that are the same each time they are begun, so that a test can make two codes meet.</summary>
    public static Func<int, int> Draws()
    {
        var random = new Random(7);
        return random.Next;
    }

    private FloorHub NewHub() => new(Store, Clock, _draw, "1.0");
}
