using System.Text.Encodings.Web;
using System.Text.Json;

namespace Slantwise.Storage.Model;

/// <summary>Values as JSON text, letters beyond ASCII left readable.</summary>
internal static class JsonText
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static string Write<T>(T value) => JsonSerializer.Serialize(value, Options);

    public static T Read<T>(string text) => JsonSerializer.Deserialize<T>(text, Options)
        ?? throw new InvalidDataException($"A stored text holds nothing where a {typeof(T).Name} belongs.");
}
