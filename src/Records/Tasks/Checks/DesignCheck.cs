using Slantwise.Records.Checks;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Files;

namespace Slantwise.Records.Tasks.Checks;

/// <summary>Whether tasks are fit for a library: complete, in words that pupils can check, with levels that are one task and leave nobody out.</summary>
/// <remarks>The rules and their reasons are in docs/tasks.md. Where a rule is a number, it is our own choice.</remarks>
public static class DesignCheck
{
    /// <summary>Looks at the tasks of a folder together.</summary>
    /// <param name="readings">As read; tasks that could not be read keep their findings and are left out of the rest.</param>
    /// <returns>Findings by file: what could not be read, each task, then tasks beside each other. Empty where there is nothing to say.</returns>
    public static IReadOnlyList<Finding> Of(IReadOnlyList<DesignReading> readings)
    {
        var findings = readings.SelectMany(r => r.Findings).ToList();
        var read = readings.Where(r => r.Design is not null).ToList();
        foreach (var reading in read) Add(findings, reading, reading.Design!);
        LibraryRules.Add(findings, read);
        return findings;
    }

    private static void Add(List<Finding> findings, DesignReading reading, TaskDesign design)
    {
        var said = new PartFindings(findings, reading.FileName);
        GridRules.Add(said, design);
        LadderRules.Add(said, design);
        foreach (var words in design.Words.Values.OrderBy(w => w.Language, StringComparer.Ordinal))
        {
            var (file, prefix) = reading.PlaceOf(words.Language);
            WordsRules.Add(new PartFindings(findings, file, prefix), design, words);
        }
    }
}
