using Microsoft.Data.Sqlite;
using Slantwise.Storage.Model;

namespace Slantwise.Storage.Sqlite;

public sealed partial class SqliteStore
{
    /// <inheritdoc/>
    public override Task BackupAsync(string file, CancellationToken cancel = default) => Task.Run(() =>
    {
        var target = Path.GetFullPath(file);
        if (target == _file) throw new ArgumentException($"{target} is the store itself: choose another file.", nameof(file));
        Directory.CreateDirectory(Path.GetDirectoryName(target)!);
        // Beside the target, so that the last step is a rename within one file system: the old backup or the new, never half.
        var copy = $"{target}.{Guid.CreateVersion7():N}.part";
        try
        {
            using (var source = Open(_connectionString))
            {
                cancel.ThrowIfCancellationRequested();
                CopyTo(copy, source);
            }
            cancel.ThrowIfCancellationRequested();
            File.Move(copy, target, overwrite: true);
        }
        finally
        {
            DeleteWithCompanions(copy);
        }
    }, cancel);

    /// <inheritdoc/>
    /// <exception cref="FileNotFoundException">There is no such file.</exception>
    public override async Task RestoreAsync(string file, CancellationToken cancel = default)
    {
        var backup = Path.GetFullPath(file);
        if (!File.Exists(backup)) throw new FileNotFoundException($"There is no file {backup}. Nothing was changed.", backup);
        if (backup == _file) throw new ArgumentException($"{backup} is the store itself: choose a backup of it.", nameof(file));
        // Checked and brought up to date as a copy: the backup stays as it is, and nothing that fails touches the store.
        var copy = $"{_file}.{Guid.CreateVersion7():N}.part";
        try
        {
            await Task.Run(() => CopyChecked(backup, copy), cancel);
            await SqliteMigration.RunAsync(copy, cancel);
            using var turn = await EnterWritingAsync(cancel);
            await Task.Run(() =>
            {
                using var source = Open(ConnectionStringOf(copy));
                using var live = Open(_connectionString);
                // One transaction of the store: a power cut in the middle leaves all of the old.
                source.BackupDatabase(live);
            }, cancel);
        }
        finally
        {
            DeleteWithCompanions(copy);
        }
    }

    private void CopyChecked(string backup, string copy)
    {
        using var source = new SqliteConnection(new SqliteConnectionStringBuilder
        {
            DataSource = backup, Mode = SqliteOpenMode.ReadOnly, Pooling = false,
        }.ToString());
        try
        {
            source.Open();
        }
        catch (SqliteException error)
        {
            throw new InvalidDataException($"{backup} cannot be read as a backup ({error.Message}). Nothing was changed.", error);
        }
        var steps = SqliteFile.StepsOf(source, backup);
        using var context = _contexts.CreateDbContext();
        SchemaSteps.RefuseUnknown(context, steps, backup);
        CopyTo(copy, source);
    }

    private static void CopyTo(string file, SqliteConnection source)
    {
        OwnersFile.Make(file);
        using var target = Open(new SqliteConnectionStringBuilder { DataSource = file, Pooling = false }.ToString());
        source.BackupDatabase(target);
        // The copy inherits WAL mode; as one plain file it can be read from anywhere, a read-only disk included.
        SqliteFile.Run(target, "PRAGMA journal_mode = DELETE");
        SqliteFile.StepsOf(target, file);
    }

    private static SqliteConnection Open(string connectionString)
    {
        var connection = new SqliteConnection(connectionString);
        connection.Open();
        ConnectionSettings.Apply(connection);
        return connection;
    }

    private static void DeleteWithCompanions(string file)
    {
        using (var connection = new SqliteConnection(ConnectionStringOf(file))) SqliteConnection.ClearPool(connection);
        foreach (var end in new[] { "", "-wal", "-shm", "-journal" }) File.Delete(file + end);
    }
}
