using System.CommandLine;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using System.Text.Unicode;

namespace Slantwise.Host.Answers;

/// <summary>What a command says on standard output: words, or JSON where that was asked for.</summary>
internal static class Answer
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        // Written for programs and files, never into a page: names stay readable.
        Encoder = JavaScriptEncoder.Create(UnicodeRanges.All),
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
    };

    /// <summary>Says one of the two.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="options">Holds <c>--json</c>.</param>
    /// <param name="words">Lines for a person.</param>
    /// <param name="json">The same for a program.</param>
    public static void Say(ParseResult parsed, GlobalOptions options, string words, object json)
    {
        if (parsed.GetValue(options.Json)) Console.Out.WriteLine(ToJson(json));
        else if (words.Length > 0) Console.Out.WriteLine(words);
    }

    /// <summary>A value as one line of JSON.</summary>
    public static string ToJson(object value) => JsonSerializer.Serialize(value, Options);

    /// <summary>A value as JSON that can still be added to.</summary>
    public static JsonObject ToNode(object value) => JsonSerializer.SerializeToNode(value, Options)!.AsObject();
}
