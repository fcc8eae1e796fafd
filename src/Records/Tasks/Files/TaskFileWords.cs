using System.Text.Json;
using Slantwise.Records.Schools;

namespace Slantwise.Records.Tasks.Files;

/// <summary>How task files spell the domain's own names: in camel case.</summary>
internal static class TaskFileWords
{
    /// <summary>Every dose's word.</summary>
    public static readonly IReadOnlyDictionary<string, DoseKind> Doses =
        Enum.GetValues<DoseKind>().ToDictionary(Of, StringComparer.Ordinal);

    /// <summary>Every demand's word.</summary>
    public static readonly IReadOnlyDictionary<string, BodyDemand> Demands =
        Enum.GetValues<BodyDemand>().ToDictionary(Of, StringComparer.Ordinal);

    /// <summary>The word for a dose, which is also its unit.</summary>
    public static string Of(DoseKind kind) => JsonNamingPolicy.CamelCase.ConvertName(kind.ToString());

    /// <summary>The word for a demand.</summary>
    public static string Of(BodyDemand demand) => JsonNamingPolicy.CamelCase.ConvertName(demand.ToString());
}
