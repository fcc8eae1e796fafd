using Slantwise.Records.Checks;
using Slantwise.Records.Tasks.Designs;

namespace Slantwise.Records.Tasks.Files;

/// <summary>What a task's file, or its files, were read as.</summary>
/// <param name="FileName">The file with the facts, as the reader knows it.</param>
/// <param name="Design">The task; none if a finding refuses a file.</param>
/// <param name="Findings">What there is to say, in the order of the files; empty if nothing.</param>
public sealed record DesignReading(string FileName, TaskDesign? Design, IReadOnlyList<Finding> Findings)
{
    /// <summary>The files that hold words of their own, by language; a language that is missing here is inside the file with the facts.</summary>
    public IReadOnlyDictionary<string, string> WordsFiles { get; init; } = new Dictionary<string, string>();

    /// <summary>The language of the words that a finding would be about, as a file and the start of a place in it.</summary>
    internal (string File, string Prefix) PlaceOf(string language) =>
        WordsFiles.TryGetValue(language, out var file) ? (file, "") : (FileName, $"words.{language}.");
}
