using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;

namespace Slantwise.Surface.Tests.Host.Sync;

/// <summary>Reads what the program answers as a device does: what is left out is none.</summary>
public static class Answered
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        AllowOutOfOrderMetadataProperties = true,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false) },
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    };

    public static T As<T>(this JsonNode? node) => node.Deserialize<T>(Options)!;
}
