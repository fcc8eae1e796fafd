using System.Text.Json.Nodes;

namespace Slantwise.Surface.Tests.Host;

/// <summary>How a command ended and what it said.</summary>
public sealed record ProgramRun(int ExitCode, string Output, string Error)
{
    public string[] ErrorLines => Error.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>The answer of a command that was asked for JSON and did what it should.</summary>
    public JsonObject Json()
    {
        Assert.True(ExitCode == 0, $"ended with {ExitCode}: {Error}");
        return JsonNode.Parse(Output)!.AsObject();
    }
}
