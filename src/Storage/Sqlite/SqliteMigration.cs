using Microsoft.EntityFrameworkCore;
using Slantwise.Storage.Model;

namespace Slantwise.Storage.Sqlite;

/// <summary>Brings a file's tables up to date, one process at a time.</summary>
internal static class SqliteMigration
{
    public static async Task RunAsync(string file, CancellationToken cancel)
    {
        await using var context = new SqliteContext(SqliteStore.OptionsFor(SqliteStore.ConnectionStringOf(file)));
        var applied = (await context.Database.GetAppliedMigrationsAsync(cancel)).ToList();
        SchemaSteps.RefuseUnknown(context, applied, file);
        if (!context.Database.GetMigrations().Except(applied).Any()) return;

        await using var alone = await LockAsync(file + "-updating", cancel);
        // A process killed in the middle leaves this row behind, and the next would wait for it forever. Under our own
        // lock, which ends with the process, nobody else can be the one who wrote it.
        await context.Database.ExecuteSqlRawAsync("DROP TABLE IF EXISTS __EFMigrationsLock", cancel);
        await context.Database.MigrateAsync(cancel);
    }

    private static async Task<FileStream> LockAsync(string file, CancellationToken cancel)
    {
        for (var waited = 0; ; waited++)
        {
            try
            {
                return new FileStream(file, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
            }
            // Somebody is at it, or was until a moment ago. After five minutes it is something else, and said.
            catch (IOException e) when (e is not DirectoryNotFoundException && waited < 6000)
            {
                await Task.Delay(50, cancel);
            }
        }
    }
}
