using Microsoft.Data.Sqlite;

namespace Slantwise.Storage.Sqlite;

/// <summary>What a file on the disk is, before anything is written to it.</summary>
internal static class SqliteFile
{
    // SQLite's result codes for files that are not databases, or not any more.
    private const int Corrupt = 11;
    private const int NotADatabase = 26;

    /// <summary>Marks an empty file as ours and puts it into WAL mode; leaves any other file as it was.</summary>
    /// <exception cref="InvalidDataException">The file holds something else.</exception>
    public static void ClaimOrRefuse(string connectionString, string file)
    {
        try
        {
            using var connection = new SqliteConnection(connectionString);
            connection.Open();
            var isEmpty = Number(connection, "SELECT COUNT(*) FROM sqlite_schema") == 0;
            if (!isEmpty && Number(connection, "PRAGMA application_id") != SqliteStore.ApplicationId)
                throw new InvalidDataException($"{file} is a database of another program. Choose another file or an empty folder.");
            if (isEmpty) Run(connection, $"PRAGMA application_id = {SqliteStore.ApplicationId}");
            Run(connection, "PRAGMA journal_mode = WAL");
        }
        catch (SqliteException error) when (error.SqliteErrorCode is NotADatabase or Corrupt)
        {
            throw new InvalidDataException($"{file} is not a database of records, or it is damaged ({error.Message}). Restore a backup into an empty folder.", error);
        }
    }

    /// <summary>The schema steps a file has been through, if it is a whole database of ours.</summary>
    /// <exception cref="InvalidDataException">It is not, or it is damaged.</exception>
    public static IReadOnlyList<string> StepsOf(SqliteConnection connection, string file)
    {
        try
        {
            if (Number(connection, "PRAGMA application_id") != SqliteStore.ApplicationId)
                throw new InvalidDataException($"{file} is a database of another program, not a backup. Nothing was changed.");
            if (Text(connection, "PRAGMA integrity_check(1)") is not ["ok"] || Text(connection, "PRAGMA foreign_key_check") is not [])
                throw new InvalidDataException($"{file} is a damaged backup. Nothing was changed.");
            var steps = Text(connection, $"SELECT MigrationId FROM {SqliteStore.HistoryTable} ORDER BY MigrationId");
            return steps.Count > 0 ? steps : throw new InvalidDataException($"{file} holds no records. Nothing was changed.");
        }
        catch (SqliteException error)
        {
            throw new InvalidDataException($"{file} is not a backup, or it is damaged ({error.Message}). Nothing was changed.", error);
        }
    }

    public static void Run(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    private static long Number(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return (long)command.ExecuteScalar()!;
    }

    private static List<string> Text(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        using var reader = command.ExecuteReader();
        var lines = new List<string>();
        while (reader.Read()) lines.Add(reader.GetString(0));
        return lines;
    }
}
