using System.Text.RegularExpressions;
using Slantwise.Desk.Pages.Tasks.Designer;
using Slantwise.Desk.Words;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Designs.Ladders;

namespace Slantwise.Surface.Tests.Desk.Tasks.Designer;

/// <summary>A page that asks for words that are not there fails only when somebody opens it: so the sources are read here.</summary>
public sealed partial class DesignerWordsTests
{
    [Fact]
    public void Say_EveryKeyNamedInThePages_HasWords()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Slantwise.slnx"))) folder = folder.Parent!;
        HashSet<string> keys =
        [
            .. Enum.GetNames<FactorUse>().Select(n => "Use" + n), .. Enum.GetNames<FactorKind>().Select(n => "Kind" + n), .. Enum.GetNames<FactorUnit>().Select(n => "Unit" + n),
            .. Enum.GetNames<LadderKind>().SelectMany(n => new[] { "Ladder" + n, "Ladder" + n + "Is" }),
            .. Enum.GetNames<DemandBasis>().Where(n => n != nameof(DemandBasis.Unknown)).Select(n => "Basis" + n), "BasisSaid", "NoValuesYet", "OneValueOnly", "StaysAt", "From",
        ];
        foreach (var file in Directory.EnumerateFiles(Path.Combine(folder.FullName, "src", "Desk", "Pages", "Tasks", "Designer")))
        {
            foreach (Match call in Call().Matches(File.ReadAllText(file)))
            {
                var key = call.Groups["key"].Value;
                keys.UnionWith(call.Groups["count"].Success ? [key + "One", key + "Many"] : [key]);
            }
        }
        Assert.True(keys.Count > 80, $"Only {keys.Count} keys were found: the pages are no longer read.");
        Assert.DoesNotContain(keys, key => !HasWords(key));
    }

    private static bool HasWords(string key)
    {
        try { return DesignerWords.Say(key).Length > 0; }
        catch (InvalidOperationException) { return false; }
    }

    [GeneratedRegex(@"\b(?:L|DesignerWords)\.Say(?<count>Count)?\(\s*""(?<key>[A-Za-z]+)""(?!\s*\+)")]
    private static partial Regex Call();
}
