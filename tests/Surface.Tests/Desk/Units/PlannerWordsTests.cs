using System.Text.RegularExpressions;
using Slantwise.Desk.Words;
using Slantwise.Records.Units.Import;

namespace Slantwise.Surface.Tests.Desk.Units;

/// <summary>A page that asks for words that are not there fails only when somebody opens it: so the sources are read here.</summary>
public sealed partial class PlannerWordsTests
{
    [Fact]
    public void Say_EveryKeyNamedInThePages_HasWords()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Slantwise.slnx"))) folder = folder.Parent!;
        HashSet<string> keys = [.. Enum.GetNames<LicenceStanding>().Select(n => "Standing" + n), "DebriefTooLittle", "DebriefFrom"];
        foreach (var file in Directory.EnumerateFiles(Path.Combine(folder.FullName, "src", "Desk", "Pages"), "*", SearchOption.AllDirectories))
        {
            var text = File.ReadAllText(file);
            if (!text.Contains("PlannerWords", StringComparison.Ordinal)) continue;
            foreach (Match call in (text.Contains("using static Slantwise.Desk.Words.PlannerWords") ? InClass() : ByName()).Matches(text))
            {
                var key = call.Groups["key"].Value;
                keys.UnionWith(call.Groups["count"].Success ? [key + "One", key + "Many"] : [key]);
            }
        }
        Assert.True(keys.Count > 100, $"Only {keys.Count} keys were found: the pages are no longer read.");
        Assert.DoesNotContain(keys, key => !HasWords(key));
    }

    private static bool HasWords(string key)
    {
        try { return PlannerWords.Say(key).Length > 0; }
        catch (InvalidOperationException) { return false; }
    }

    [GeneratedRegex(@"\b(?:P|PlannerWords)\.Say(?<count>Count)?\(\s*""(?<key>[A-Za-z]+)""(?!\s*\+)")]
    private static partial Regex ByName();

    [GeneratedRegex(@"\bSay(?<count>Count)?\(\s*""(?<key>[A-Za-z]+)""(?!\s*\+)")]
    private static partial Regex InClass();
}
