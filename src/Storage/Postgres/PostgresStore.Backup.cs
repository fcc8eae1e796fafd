using Npgsql;
using Slantwise.Storage.Model;

namespace Slantwise.Storage.Postgres;

public sealed partial class PostgresStore
{
    /// <inheritdoc/>
    /// <exception cref="InvalidOperationException">PostgreSQL's pg_dump is not on this machine, or failed.</exception>
    public override async Task BackupAsync(string file, CancellationToken cancel = default)
    {
        var target = Path.GetFullPath(file);
        Directory.CreateDirectory(Path.GetDirectoryName(target)!);
        var copy = $"{target}.{Guid.CreateVersion7():N}.part";
        try
        {
            OwnersFile.Make(copy);
            await PostgresTool.RunAsync("pg_dump", Settings, ["--format=custom", "--no-owner", "--no-privileges", $"--file={copy}", $"--dbname={Settings.Database}"], cancel);
            await StepsOfAsync(copy, cancel);
            File.Move(copy, target, overwrite: true);
        }
        finally
        {
            File.Delete(copy);
        }
    }

    /// <inheritdoc/>
    /// <exception cref="FileNotFoundException">There is no such file.</exception>
    /// <exception cref="InvalidOperationException">PostgreSQL's pg_restore is not on this machine, or the server refused.</exception>
    public override async Task RestoreAsync(string file, CancellationToken cancel = default)
    {
        var backup = Path.GetFullPath(file);
        if (!File.Exists(backup)) throw new FileNotFoundException($"There is no file {backup}. Nothing was changed.", backup);
        var steps = await StepsOfAsync(backup, cancel);
        await using (var context = await _contexts.CreateDbContextAsync(cancel))
        {
            SchemaSteps.RefuseUnknown(context, steps, backup);
            // Newer tables would stay beside the older ones, a mixture no version knows.
            SchemaSteps.RefuseOlder(context, steps, backup);
        }
        // One transaction: either every row of the backup or every row of now.
        try
        {
            await PostgresTool.RunAsync("pg_restore", Settings,
                ["--clean", "--if-exists", "--single-transaction", "--exit-on-error", "--no-owner", "--no-privileges", $"--dbname={Settings.Database}", backup], cancel);
        }
        catch (PostgresToolException error)
        {
            throw new InvalidOperationException($"The server did not take {backup}, and nothing was changed: {error.Message}", error);
        }
        // Statements prepared for the tables that were replaced are of no use any more.
        await using var connection = new NpgsqlConnection(_connectionString);
        NpgsqlConnection.ClearPool(connection);
    }

    private NpgsqlConnectionStringBuilder Settings => new(_connectionString);

    // Reads the whole archive, so a truncated one is found before the server is asked for anything.
    private async Task<IReadOnlyList<string>> StepsOfAsync(string file, CancellationToken cancel)
    {
        string script;
        try
        {
            await PostgresTool.RunAsync("pg_restore", null, ["--data-only", $"--file={(OperatingSystem.IsWindows() ? "NUL" : "/dev/null")}", file], cancel);
            script = await PostgresTool.RunAsync("pg_restore", null, ["--data-only", $"--table={HistoryTable}", "--file=-", file], cancel);
        }
        catch (PostgresToolException error)
        {
            throw new InvalidDataException($"{file} is not a backup of a PostgreSQL store, or it is damaged ({error.Message}). Nothing was changed.", error);
        }
        var lines = script.Split('\n');
        var steps = lines.SkipWhile(l => !l.StartsWith("COPY ") || !l.Contains(HistoryTable)).Skip(1)
            .TakeWhile(l => l is not "\\.").Select(l => l.Split('\t')[0]).ToList();
        return steps.Count > 0 ? steps
            : throw new InvalidDataException($"{file} is a backup of another program's database. Nothing was changed.");
    }
}
