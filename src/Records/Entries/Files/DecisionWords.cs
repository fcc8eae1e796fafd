using Slantwise.Records.Csv;

namespace Slantwise.Records.Entries.Files;

/// <summary>The words a table uses for a decision.</summary>
internal static class DecisionWords
{
    /// <summary>What may be written, for a message.</summary>
    public const string Allowed = "same, harder, easier";

    public static NextLevel? Read(string text) => CsvColumns<EntryColumn>.Folded(text) switch
    {
        "same" or "igual" or "mismo" => NextLevel.Same,
        "harder" or "masdificil" => NextLevel.Harder,
        "easier" or "masfacil" => NextLevel.Easier,
        _ => null,
    };

    public static string Of(NextLevel next) => next switch
    {
        NextLevel.Harder => "harder",
        NextLevel.Easier => "easier",
        _ => "same",
    };
}
