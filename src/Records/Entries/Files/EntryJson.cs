using System.Text.Json;
using System.Text.Json.Serialization;

namespace Slantwise.Records.Entries.Files;

/// <summary>How entries are written as JSON: camel case, enumerations by name, the fact's kind in <c>fact.kind</c>.</summary>
/// <remarks>Source: [RFC8259].</remarks>
public static class EntryJson
{
    /// <summary>The options for reading and writing. A property that is not known is an error, so that nothing is silently lost.</summary>
    public static JsonSerializerOptions Options { get; } = Made();

    private static JsonSerializerOptions Made()
    {
        var options = new JsonSerializerOptions(JsonSerializerDefaults.Web)
        {
            AllowOutOfOrderMetadataProperties = true,
            DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
            NumberHandling = JsonNumberHandling.Strict,
            RespectNullableAnnotations = true,
            RespectRequiredConstructorParameters = true,
            UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        };
        options.Converters.Add(new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false));
        options.MakeReadOnly(populateMissingResolver: true);
        return options;
    }
}
