using System.CommandLine;
using Slantwise.Host.Words;

namespace Slantwise.Host;

/// <summary>The options that every command takes.</summary>
internal sealed class GlobalOptions
{
    /// <summary>The data folder; none for the usual one.</summary>
    public Option<string?> Data { get; } = new("--data") { Description = HostWords.Say("OptionData"), HelpName = "DIR", Recursive = true };

    /// <summary>Whether the answer, and an error, is JSON.</summary>
    public Option<bool> Json { get; } = new("--json") { Description = HostWords.Say("OptionJson"), Recursive = true };

    /// <summary>A PostgreSQL server to use in place of the file; none for the file.</summary>
    public Option<string?> Postgres { get; } = new("--postgres") { Description = HostWords.Say("OptionPostgres"), HelpName = "CONN", Recursive = true };

    /// <summary>Adds them to the root.</summary>
    public void AddTo(Command root)
    {
        root.Add(Data);
        root.Add(Json);
        root.Add(Postgres);
    }
}
