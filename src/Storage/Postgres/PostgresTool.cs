using System.ComponentModel;
using System.Diagnostics;
using Npgsql;

namespace Slantwise.Storage.Postgres;

/// <summary>Runs PostgreSQL's own programs for backup and restore.</summary>
internal static class PostgresTool
{
    /// <summary>Runs a program to its end.</summary>
    /// <param name="program">Its name, found on PATH.</param>
    /// <param name="server">The server it is to ask; none where it only reads a file.</param>
    /// <param name="arguments">Its arguments.</param>
    /// <param name="cancel">Ends it.</param>
    /// <returns>What it wrote.</returns>
    /// <exception cref="InvalidOperationException">It is not on this machine.</exception>
    /// <exception cref="PostgresToolException">It failed.</exception>
    public static async Task<string> RunAsync(
        string program, NpgsqlConnectionStringBuilder? server, IReadOnlyList<string> arguments, CancellationToken cancel)
    {
        var start = new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        if (server is not null) Connect(start, server);
        using var process = Start(start);
        try
        {
            var said = process.StandardOutput.ReadToEndAsync(cancel);
            var complained = process.StandardError.ReadToEndAsync(cancel);
            await process.WaitForExitAsync(cancel);
            if (process.ExitCode == 0) return await said;
            throw new PostgresToolException($"{program}: {FirstLine(await complained)}");
        }
        catch (OperationCanceledException)
        {
            process.Kill(entireProcessTree: true);
            throw;
        }
    }

    // By environment, not by argument: every user of a machine can read another process's arguments, a password among them.
    private static void Connect(ProcessStartInfo start, NpgsqlConnectionStringBuilder server)
    {
        start.Environment["PGHOST"] = server.Host;
        start.Environment["PGPORT"] = server.Port.ToString(System.Globalization.CultureInfo.InvariantCulture);
        if (server.Username is { } user) start.Environment["PGUSER"] = user;
        if (server.Password is { } password) start.Environment["PGPASSWORD"] = password;
        start.Environment["PGSSLMODE"] = server.SslMode switch
        {
            SslMode.VerifyCA => "verify-ca",
            SslMode.VerifyFull => "verify-full",
            var mode => mode.ToString().ToLowerInvariant(),
        };
    }

    private static Process Start(ProcessStartInfo start)
    {
        try
        {
            return Process.Start(start)!;
        }
        catch (Win32Exception error)
        {
            throw new InvalidOperationException(
                $"{start.FileName} is not on this machine: install PostgreSQL's client programs (Debian: postgresql-client) and try again.", error);
        }
    }

    private static string FirstLine(string text) => text.Split('\n', StringSplitOptions.RemoveEmptyEntries).FirstOrDefault(l => l.Contains("error"))
        ?? text.Split('\n')[0];
}
