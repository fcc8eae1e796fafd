using System.Globalization;
using System.Text.Json;

namespace Slantwise.Records.Postures;

/// <summary>What the library's postures are called.</summary>
public static class PostureNames
{
    private static readonly Lazy<IReadOnlyDictionary<string, string>> English = new(() => Read("en") ?? throw new InvalidDataException("The postures that come with the program have no names."));
    private static readonly Lazy<IReadOnlyDictionary<string, string>> Spanish = new(() => Read("es") ?? English.Value);

    /// <summary>The name of a posture, to show.</summary>
    /// <param name="key">Its key in the library.</param>
    /// <param name="culture">The reader's language; English where there is no translation.</param>
    /// <returns>The key itself for a posture that is not the library's: a teacher's own file.</returns>
    public static string Of(string key, CultureInfo culture) => Names(culture).GetValueOrDefault(key) ?? English.Value.GetValueOrDefault(key) ?? key;

    /// <summary>Every name in a language, by key.</summary>
    /// <param name="culture">The reader's language; English where there is no translation.</param>
    public static IReadOnlyDictionary<string, string> Names(CultureInfo culture) => culture.TwoLetterISOLanguageName == "es" ? Spanish.Value : English.Value;

    private static Dictionary<string, string>? Read(string language)
    {
        using var stream = typeof(PostureNames).Assembly.GetManifestResourceStream($"content/{language}/postures.json");
        if (stream is null) return null;
        using var json = JsonDocument.Parse(stream);
        return json.RootElement.EnumerateObject().ToDictionary(p => p.Name, p => p.Value.GetProperty("name").GetString() ?? p.Name, StringComparer.Ordinal);
    }
}
