using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text.Json.Nodes;

namespace Slantwise.Surface.Tests.Host.Studies;

/// <summary>The commands on plain tables, run as a user runs them; and the tables beside these tests.</summary>
internal static class StudyRun
{
    /// <summary>The answer as JSON.</summary>
    public static async Task<JsonObject> JsonAsync(params string[] arguments) => (await HostProgram.RunAsync([.. arguments, "--json"])).Json();

    /// <summary>A table beside the tests.</summary>
    public static string Data(string name, [CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, "data", name);

    /// <summary>Its rows as fields, comments and head left out.</summary>
    public static List<string[]> Rows(string name) =>
        [.. File.ReadLines(Data(name)).Where(l => l.Length > 0 && l[0] != '#').Skip(1).Select(l => l.Replace("\"", "").Split(','))];

    /// <summary>A number in an answer.</summary>
    public static double Number(this JsonNode? node) => node!.GetValue<double>();

    /// <summary>The entry of a list with a name under some key.</summary>
    public static JsonNode Named(this JsonNode? list, string key, string name) => list!.AsArray().Single(e => e![key]?.GetValue<string>() == name)!;

    /// <summary>Whether numbers are as good as equal.</summary>
    public static IEqualityComparer<double> Within(double tolerance) => EqualityComparer<double>.Create((a, b) => Math.Abs(a - b) <= tolerance);

    /// <summary>A number written in a table.</summary>
    public static double Read(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
