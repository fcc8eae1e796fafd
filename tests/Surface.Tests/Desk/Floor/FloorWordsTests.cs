using System.Text.RegularExpressions;
using Slantwise.Desk.Words;
using Slantwise.Records.Floor;

namespace Slantwise.Surface.Tests.Desk.Floor;

/// <summary>A page that asks for words that are not there fails only when somebody opens it: so the sources are read here.</summary>
public sealed partial class FloorWordsTests
{
    [Fact]
    public void Say_EveryKeyNamedInThePage_HasWords()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Slantwise.slnx"))) folder = folder.Parent!;
        var keys = new HashSet<string>(Enum.GetNames<FloorDeviceKind>().Select(name => "Kind" + name));
        foreach (var file in Directory.EnumerateFiles(Path.Combine(folder.FullName, "src", "Desk", "Pages", "Floor")))
        {
            // In pages the words of the whole desk are said without a letter before them; in classes there are no others than these.
            foreach (Match call in (file.EndsWith(".razor", StringComparison.Ordinal) ? InPage() : InClass()).Matches(File.ReadAllText(file)))
            {
                foreach (Match key in Literal().Matches(call.Groups["first"].Value).Where(k => k.Groups[1].Value != "Kind"))
                    keys.UnionWith(call.Groups["count"].Success ? [key.Groups[1].Value + "One", key.Groups[1].Value + "Many"] : [key.Groups[1].Value]);
            }
        }
        Assert.True(keys.Count > 80, $"Only {keys.Count} keys were found: the pages are no longer read.");
        Assert.DoesNotContain(keys, key => !HasWords(key));
    }

    private static bool HasWords(string key)
    {
        try { return FloorWords.Say(key).Length > 0; }
        catch (InvalidOperationException) { return false; }
    }

    [GeneratedRegex(@"\bF\.Say(?<count>Count)?\((?<first>(?:""[A-Za-z]+""|[^"",()]|\([^()]*\))*)")]
    private static partial Regex InPage();

    [GeneratedRegex(@"\bSay(?<count>Count)?\((?<first>(?:""[A-Za-z]+""|[^"",()]|\([^()]*\))*)")]
    private static partial Regex InClass();

    [GeneratedRegex(@"""([A-Z][A-Za-z]+)""")]
    private static partial Regex Literal();
}
