using System.Security.Cryptography;
using Microsoft.AspNetCore.DataProtection;
using Slantwise.Desk.Pages.Floor;
using Slantwise.Records.Entries;
using Slantwise.Records.Floor;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Storage.Sqlite;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Floor;

/// <summary>The demo school's coming lesson, open for devices, with a program that can be killed and started again where it was.</summary>
internal sealed class Gym : IAsyncDisposable
{
    private readonly SemaphoreSlim _turn = new(1, 1);

    private Gym(TempFolder folder, ServedHost served, FloorLesson lesson, LessonRecord record) => (Folder, Served, Lesson, Record) = (folder, served, lesson, record);

    public TempFolder Folder { get; }
    public ServedHost Served { get; private set; }
    public FloorLesson Lesson { get; }

    /// <summary>The lesson before anything was written.</summary>
    public LessonRecord Record { get; }

    /// <summary>Opens the lesson and serves it.</summary>
    /// <param name="demo">The demo school.</param>
    /// <param name="pupilCount">As many are added to the class as are missing to this; none for as many as there are.</param>
    /// <param name="prepare">What else to do to the store before the lesson is opened.</param>
    public static async Task<Gym> OpenAsync(DemoFolder demo, int? pupilCount = null, Func<SqliteStore, LessonRecord, Task>? prepare = null)
    {
        var folder = await demo.CopyAsync();
        FloorLesson lesson;
        LessonRecord record;
        await using (var store = await LessonOfDemo.OpenAsync(folder))
        {
            var school = (await store.ListSchoolsAsync()).Single();
            var coming = (await store.ListLessonsAsync(school.Id))[^1];
            record = await LessonOfDemo.LoadAsync(store, coming.Id);
            var newcomers = Enumerable.Range(0, Math.Max(0, (pupilCount ?? 0) - record.Pupils.Count))
                .Select(i => new Pupil { SchoolId = school.Id, Id = EntryId.New(TimeProvider.System), Code = $"ZZ{i}", DisplayName = $"Newcomer {i + 1}" }).ToList();
            await store.SaveRosterAsync(school.Id, new()
            {
                Pupils = newcomers,
                Enrolments = [.. newcomers.Select(p => new Enrolment { SchoolId = school.Id, ClassId = record.Class.Id, PupilId = p.Id })],
            });
            if (prepare is not null) await prepare(store, record);
            await using var hub = new FloorHub(store, TimeProvider.System, RandomNumberGenerator.GetInt32, "test");
            lesson = await hub.OpenAsync(school.Id, coming.Id);
            record = await LessonOfDemo.LoadAsync(store, coming.Id);
        }
        return new Gym(folder, await ServedHost.StartAsync(folder: folder.FullPath), lesson, record);
    }

    /// <summary>The levels a pupil may see in a task, in order, as the records say it.</summary>
    public IReadOnlyList<Guid> LevelsOf(Guid pupilId, Guid taskId) =>
    [
        .. Records.Sheets.Offer.LevelsFor(
            Record.Sheet!.Content.Tasks.Single(t => t.TaskId == taskId).Levels, Record.School.Policy, Record.Restrictions.Where(r => r.PupilId == pupilId), Record.Lesson.Date)
            .Select(l => l.Id),
    ];

    /// <summary>A ticket as the desk makes it.</summary>
    public string Ticket(FloorDeviceKind kind) => new FloorTickets(
        DataProtectionProvider.Create(new DirectoryInfo(Folder.At("keys")), protection => protection.SetApplicationName("slantwise")), TimeProvider.System)
        .Of(Record.School.Id, Lesson.LessonId, kind);

    /// <summary>Ends the program on the spot, as a power cut does.</summary>
    public Task KillAsync() => Served.KillAsync();

    /// <summary>Starts it again on the same port and the same data.</summary>
    /// <param name="program">Another program's file; none for the same one.</param>
    public async Task StartAgainAsync(string? program = null)
    {
        var port = Served.Address.Port;
        await Served.DisposeAsync();
        Served = await ServedHost.StartAsync(folder: Folder.FullPath, port: port, program: program);
    }

    /// <summary>Both, in one turn: nobody else kills it meanwhile.</summary>
    public async Task KillAndStartAgainAsync()
    {
        await _turn.WaitAsync();
        try
        {
            await KillAsync();
            await StartAgainAsync();
        }
        finally
        {
            _turn.Release();
        }
    }

    /// <summary>Every entry of the lesson as the store has it, read beside the program.</summary>
    public async Task<IReadOnlyList<Entry>> EntriesAsync()
    {
        await using var store = await LessonOfDemo.OpenAsync(Folder);
        return await store.ListEntriesAsync(Record.School.Id, Lesson.LessonId);
    }

    public async ValueTask DisposeAsync()
    {
        await Served.DisposeAsync();
        Folder.Dispose();
        _turn.Dispose();
    }
}
