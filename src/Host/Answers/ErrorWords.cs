using System.Data.Common;
using Microsoft.Data.Sqlite;
using Npgsql;
using Slantwise.Host.Words;
using Slantwise.Storage.Postgres;
using SQLitePCL;

namespace Slantwise.Host.Answers;

/// <summary>The one place where a failure of a command becomes words.</summary>
internal static class ErrorWords
{
    private const int Interrupted = 130;

    /// <summary>Writes the failure as a line, or as JSON, and gives the exit code.</summary>
    public static int Write(Exception failure, bool isJson, TextWriter to)
    {
        var (sentence, exitCode) = Of(failure);
        var details = (failure as Refusal)?.Details ?? [];
        if (isJson) to.WriteLine(Answer.ToJson(details.Count == 0 ? new { error = sentence } : new { error = sentence, details }));
        else
        {
            foreach (var detail in details) to.WriteLine(detail);
            if (sentence.Length > 0) to.WriteLine(sentence);
        }
        return exitCode;
    }

    private static (string Sentence, int ExitCode) Of(Exception failure) => failure switch
    {
        Refusal refusal => (refusal.Message, refusal.ExitCode),
        OperationCanceledException => (HostWords.Say("Stopped"), Interrupted),
        _ when Inner<SqliteException>(failure) is { } sqlite => (Of(sqlite), Refusal.NotPossible),
        _ when Inner<PostgresException>(failure) is { } said => (HostWords.Say("PostgresRefused", said.MessageText), Refusal.NotPossible),
        _ when Inner<DbException>(failure) is { } database => (HostWords.Say("DatabaseUnreachable", OneLine(database.Message)), Refusal.NotPossible),
        PostgresToolException => (HostWords.Say("PostgresTool", OneLine(failure.Message)), Refusal.NotPossible),
        UnauthorizedAccessException => (HostWords.Say("NoPermission", OneLine(failure.Message)), Refusal.NotPossible),
        FileNotFoundException { FileName: { Length: > 0 } file } => (HostWords.Say("NoFile", file), Refusal.BadInput),
        DirectoryNotFoundException => (HostWords.Say("NoFolder", OneLine(failure.Message)), Refusal.BadInput),
        InvalidDataException => (OneLine(failure.Message), Refusal.BadInput),
        IOException => (HostWords.Say("FileFailed", OneLine(failure.Message)), Refusal.NotPossible),
        _ => (HostWords.Say("Unexpected", failure.GetType().Name, OneLine(failure.Message)), Refusal.NotPossible),
    };

    private static string Of(SqliteException failure) => failure.SqliteErrorCode switch
    {
        raw.SQLITE_BUSY or raw.SQLITE_LOCKED => HostWords.Say("DatabaseBusy"),
        raw.SQLITE_READONLY => HostWords.Say("DatabaseReadOnly"),
        raw.SQLITE_CORRUPT or raw.SQLITE_NOTADB => HostWords.Say("DatabaseDamaged"),
        raw.SQLITE_FULL => HostWords.Say("DiskFull"),
        raw.SQLITE_CANTOPEN => HostWords.Say("DatabaseCannotOpen"),
        _ => HostWords.Say("DatabaseFailed", OneLine(failure.Message)),
    };

    private static T? Inner<T>(Exception failure)
        where T : Exception
    {
        for (var at = failure; at is not null; at = at.InnerException)
            if (at is T found) return found;
        return null;
    }

    /// <summary>A message without its line breaks.</summary>
    public static string OneLine(string message) => string.Join(' ', message.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
