using System.Text.RegularExpressions;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Files;

namespace Slantwise.Records.Tasks.Checks;

/// <summary>What a task's facts and its factor grid keep to.</summary>
internal static partial class GridRules
{
    public const int FactorCountLeast = 2;
    public const int FactorCountMost = 5;
    public const decimal SpaceLeastM = 0.5m;
    public const decimal SpaceMostM = 10;

    public static void Add(PartFindings said, TaskDesign design)
    {
        if (design.Supports.Count == 0) said.Flag("DesignSupports", "supports", string.Join(", ", TaskFileWords.All<SupportPart>().Keys));
        if (design.Space.SpaceM is < SpaceLeastM or > SpaceMostM) said.Flag("DesignSpace", "space.metres", design.Space.SpaceM, SpaceLeastM, SpaceMostM);
        if (design.Space.Source != ClearSpace.CommonPractice && !SourceKey().IsMatch(design.Space.Source))
        {
            said.Flag("DesignSpaceSource", "space.source", design.Space.Source, ClearSpace.CommonPractice);
        }
        if (design.Factors.Count is < FactorCountLeast or > FactorCountMost)
        {
            said.Flag("DesignFactorCount", "factors", design.Factors.Count, FactorCountLeast, FactorCountMost);
        }
        var keys = design.Factors.Count(f => f.Role == FactorRole.Key);
        if (keys != 1) said.Flag("DesignKeyFactor", "factors", keys);
        for (var i = 0; i < design.Factors.Count; i++)
        {
            var factor = design.Factors[i];
            if (!FactorKey().IsMatch(factor.Key)) said.Refuse("DesignFactorKey", $"factors[{i}].key", factor.Key);
            if (design.Factors.Take(i).Any(f => f.Key == factor.Key)) said.Refuse("DesignFactorTwice", $"factors[{i}].key", factor.Key);
            AddRange(said, factor, $"factors[{i}].");
        }
    }

    private static void AddRange(PartFindings said, TaskFactor factor, string place)
    {
        if (factor.Range.Count < 2) said.Flag("DesignRangeShort", place + "range", factor.Range.Count);
        if (factor.Range.Distinct().Count() != factor.Range.Count) said.Refuse("DesignRangeTwice", place + "range");
        var numbers = factor.Range.Select(v => v.Amount).OfType<decimal>().ToList();
        if (numbers.Count != factor.Range.Count && (numbers.Count > 0 || factor.Dose is not null)) said.Refuse("DesignRangeMixed", place + "range");
        else if (numbers.Count > 1 && !numbers.SequenceEqual(numbers.Order()) && !numbers.SequenceEqual(numbers.OrderDescending()))
        {
            said.Refuse("DesignRangeOrder", place + "range");
        }
        // A dose's key is its unit; a word has none; any other number needs one.
        var needsUnit = numbers.Count > 0 && factor.Dose is null;
        if (needsUnit != factor.Unit is not null)
        {
            said.Flag(needsUnit ? "DesignUnitMissing" : "DesignUnitTooMuch", place + "unit", string.Join(", ", TaskFileWords.All<FactorUnit>().Keys));
        }
    }

    [GeneratedRegex("^[a-z][A-Za-z0-9]*$")]
    private static partial Regex FactorKey();

    [GeneratedRegex("^[A-Z][A-Za-z]+[0-9]{4}$")]
    private static partial Regex SourceKey();
}
