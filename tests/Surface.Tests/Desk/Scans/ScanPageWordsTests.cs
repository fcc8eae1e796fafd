using System.Text.RegularExpressions;
using Slantwise.Desk.Words;

namespace Slantwise.Surface.Tests.Desk.Scans;

/// <summary>A page that asks for words that are not there fails only when somebody opens it: so the sources are read here.</summary>
public sealed partial class ScanPageWordsTests
{
    [Fact]
    public void Say_EveryKeyNamedInAPage_HasWords()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Slantwise.slnx"))) folder = folder.Parent!;
        var keys = new HashSet<string>();
        foreach (var file in Directory.EnumerateFiles(Path.Combine(folder.FullName, "src", "Desk", "Pages", "Scans")))
        {
            foreach (Match call in Call().Matches(File.ReadAllText(file)))
            {
                foreach (Match key in Literal().Matches(call.Groups["first"].Value))
                    keys.UnionWith(call.Groups["count"].Success ? [key.Groups[1].Value + "One", key.Groups[1].Value + "Many"] : [key.Groups[1].Value]);
            }
        }
        Assert.True(keys.Count > 90, $"Only {keys.Count} keys were found: the pages are no longer read.");
        Assert.DoesNotContain(keys, key => !HasWords(key));
    }

    private static bool HasWords(string key)
    {
        try { return ScanPageWords.Say(key).Length > 0; }
        catch (InvalidOperationException) { return false; }
    }

    [GeneratedRegex(@"\bSay(?<count>Count)?\((?<first>(?:""[A-Za-z]+""|[^"",()]|\([^()]*\))*)")]
    private static partial Regex Call();

    [GeneratedRegex(@"""([A-Z][A-Za-z]+)""")]
    private static partial Regex Literal();
}
