using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Slantwise.Storage.Sqlite;

/// <summary>Settings SQLite forgets with each connection.</summary>
internal sealed class ConnectionSettings : DbConnectionInterceptor
{
    // synchronous=FULL: in WAL mode the default of some builds is NORMAL, which after a power cut loses the last commits
    // although they were acknowledged. An entry a teacher has seen saved must still be there: every commit waits for the disk.
    // fullfsync: on macOS a plain fsync leaves data in the drive's cache; elsewhere it changes nothing.
    // secure_delete: an erased pupil's bytes are overwritten, not merely unlinked.
    public const string Sql =
        "PRAGMA synchronous = FULL; PRAGMA fullfsync = ON; PRAGMA busy_timeout = 10000; PRAGMA secure_delete = ON; PRAGMA foreign_keys = ON;";

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData) => Apply(connection);

    public override Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        Apply(connection);
        return Task.CompletedTask;
    }

    public static void Apply(DbConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = Sql;
        command.ExecuteNonQuery();
    }
}
