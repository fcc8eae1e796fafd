using System.Text.Json;
using Slantwise.Records.Schools;

namespace Slantwise.Records.Tasks.Files;

/// <summary>How task files spell the domain's own names: in camel case.</summary>
internal static class TaskFileWords
{
    /// <summary>Every dose's word.</summary>
    public static readonly IReadOnlyDictionary<string, DoseKind> Doses = All<DoseKind>();

    /// <summary>Every demand's word.</summary>
    public static readonly IReadOnlyDictionary<string, BodyDemand> Demands = All<BodyDemand>();

    /// <summary>The word for one of the domain's names; a dose's is also its unit.</summary>
    public static string Of<T>(T named) where T : struct, Enum => JsonNamingPolicy.CamelCase.ConvertName(named.ToString());

    /// <summary>Every name of a kind by its word.</summary>
    public static IReadOnlyDictionary<string, T> All<T>() where T : struct, Enum =>
        Enum.GetValues<T>().ToDictionary(Of, StringComparer.Ordinal);
}
