using System.CommandLine;
using Slantwise.Host.Answers;
using Slantwise.Records;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Storage.Postgres;
using Slantwise.Storage.Sqlite;

namespace Slantwise.Host;

/// <summary>The store a command works on, open until it is disposed.</summary>
internal sealed class OpenStore : IAsyncDisposable
{
    private readonly IAsyncDisposable _open;

    private OpenStore(IStore store, IAsyncDisposable open, DataFolder folder) => (Store, _open, Folder) = (store, open, folder);

    public IStore Store { get; }

    public DataFolder Folder { get; }

    /// <summary>Opens the store named by the options, making it where there is none.</summary>
    public static async Task<OpenStore> MakeAsync(ParseResult parsed, GlobalOptions options, CancellationToken cancel)
    {
        var folder = DataFolder.Of(parsed, options);
        if (Connection(parsed, options) is { } connection)
        {
            try
            {
                var postgres = await PostgresStore.OpenAsync(connection, TimeProvider.System, cancel);
                return new OpenStore(postgres, postgres, folder);
            }
            catch (ArgumentException)
            {
                // Not repeated: it may hold a password.
                throw Refusal.Of("PostgresConnection");
            }
        }
        folder.MakeDatabaseFile();
        try
        {
            var sqlite = await SqliteStore.OpenAsync(folder.DatabaseFile, TimeProvider.System, cancel);
            return new OpenStore(sqlite, sqlite, folder);
        }
        catch (InvalidDataException failure)
        {
            throw Refusal.Of("DatabaseForeign", folder.DatabaseFile, ErrorWords.OneLine(failure.Message));
        }
    }

    /// <summary>Opens the store for a command that needs something in it.</summary>
    public static async Task<OpenStore> OpenAsync(ParseResult parsed, GlobalOptions options, CancellationToken cancel)
    {
        var folder = DataFolder.Of(parsed, options);
        // Looking must not make an empty database.
        if (Connection(parsed, options) is null && !folder.HasDatabase) throw Refusal.Of("NothingThere", folder.FullPath);
        return await MakeAsync(parsed, options, cancel);
    }

    /// <summary>Whether the options name a PostgreSQL server.</summary>
    public static bool IsPostgres(ParseResult parsed, GlobalOptions options) => Connection(parsed, options) is not null;

    /// <summary>The store's school; with several, the first by name, as on the desk.</summary>
    public async Task<School> SchoolAsync(CancellationToken cancel) =>
        (await Store.ListSchoolsAsync(cancel)).FirstOrDefault() ?? throw Refusal.Of("NoSchool");

    /// <summary>Everything known about a lesson.</summary>
    public async Task<LessonRecord> RecordAsync(Lesson lesson, CancellationToken cancel) =>
        await LessonRecord.LoadAsync(Store, lesson.SchoolId, lesson.Id, cancel) ?? throw Refusal.Of("NoSuchLesson", lesson.Id);

    public ValueTask DisposeAsync() => _open.DisposeAsync();

    private static string? Connection(ParseResult parsed, GlobalOptions options)
    {
        var asked = parsed.GetValue(options.Postgres) ?? Environment.GetEnvironmentVariable("SLANTWISE_POSTGRES");
        return string.IsNullOrWhiteSpace(asked) ? null : asked;
    }
}
