using System.Text.Json;

namespace Slantwise.Host.Studies;

/// <summary>Cautions of an engine, each by itself.</summary>
internal static class CautionLines
{
    /// <summary>The cautions by name, as JSON has them.</summary>
    public static IReadOnlyList<string> Names<T>(T cautions)
        where T : struct, Enum => [.. Each(cautions).Select(c => JsonNamingPolicy.CamelCase.ConvertName(c.ToString()))];

    /// <summary>The cautions as sentences.</summary>
    /// <param name="cautions">Any of them.</param>
    public static IReadOnlyList<string> Sentences<T>(T cautions)
        where T : struct, Enum => [.. Each(cautions).Select(c => StudyWords.Say(typeof(T).Name + c))];

    private static IEnumerable<T> Each<T>(T cautions)
        where T : struct, Enum => Enum.GetValues<T>().Where(c => Convert.ToInt32(c, null) != 0 && cautions.HasFlag(c));
}
