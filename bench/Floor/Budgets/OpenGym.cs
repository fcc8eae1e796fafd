using System.Diagnostics;
using System.Security.Cryptography;
using System.Text.Json.Nodes;
using Slantwise.Records.Floor;
using Slantwise.Storage.Sqlite;

namespace Slantwise.Bench.Floor.Budgets;

/// <summary>The demo school with its coming lesson open for devices, served by the published program.</summary>
internal sealed class OpenGym : IDisposable
{
    private readonly Process _process;

    private OpenGym(Process process, Uri address, string code) => (_process, Address, Code) = (process, address, code);

    public Uri Address { get; }

    public string Code { get; }

    public static async Task<OpenGym> StartAsync(string program, string folder)
    {
        using (var loading = Start(program, "demo", "load", "--data", folder)) await loading.WaitForExitAsync();
        FloorLesson lesson;
        await using (var store = await SqliteStore.OpenAsync(Path.Combine(folder, "slantwise.db"), TimeProvider.System))
        {
            var school = (await store.ListSchoolsAsync()).Single();
            await using var hub = new FloorHub(store, TimeProvider.System, RandomNumberGenerator.GetInt32, "bench");
            lesson = await hub.OpenAsync(school.Id, (await store.ListLessonsAsync(school.Id))[^1].Id);
        }
        var process = Start(program, "serve", "--json", "--port", "0", "--data", folder);
        var said = await process.StandardOutput.ReadLineAsync() ?? throw new InvalidOperationException("The program ended at once.");
        return new OpenGym(process, new Uri(JsonNode.Parse(said)!["address"]!.GetValue<string>()), lesson.Code);
    }

    public void Dispose()
    {
        _process.Kill();
        _process.Dispose();
    }

    private static Process Start(string program, params IReadOnlyList<string> arguments)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, UseShellExecute = false };
        foreach (var argument in (string[])[program, .. arguments]) start.ArgumentList.Add(argument);
        return Process.Start(start)!;
    }
}
