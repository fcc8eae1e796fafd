using System.Text.RegularExpressions;
using Slantwise.Desk.Pages.Library;
using Slantwise.Desk.Words;
using Slantwise.Records.Tasks.Designs;

namespace Slantwise.Surface.Tests.Desk.Library;

/// <summary>A page that asks for words that are not there fails only when somebody opens it: so the sources are read here.</summary>
public sealed partial class LibraryWordsTests
{
    [Fact]
    public void Say_EveryKeyNamedInThePages_HasWords()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Slantwise.slnx"))) folder = folder.Parent!;
        var pages = Path.Combine(folder.FullName, "src", "Desk", "Pages");
        HashSet<string> keys =
        [
            .. Enum.GetNames<LibraryNeed>().Select(n => "Need" + n), .. Enum.GetNames<FactorUnit>().Select(n => "Value" + n),
            "TakesRope", "TakesBall", "TakesMore", "Before", "After",
        ];
        foreach (var file in new[] { "Library", "Tasks" }.SelectMany(f => Directory.EnumerateFiles(Path.Combine(pages, f))))
        {
            var text = File.ReadAllText(file);
            foreach (Match call in (text.Contains("using static Slantwise.Desk.Words.LibraryWords") ? InClass() : ByName()).Matches(text))
            {
                var key = call.Groups["key"].Value;
                keys.UnionWith(call.Groups["count"].Success ? [key + "One", key + "Many"] : [key]);
            }
        }
        Assert.True(keys.Count > 60, $"Only {keys.Count} keys were found: the pages are no longer read.");
        Assert.DoesNotContain(keys, key => !HasWords(key));
    }

    private static bool HasWords(string key)
    {
        try { return LibraryWords.Say(key).Length > 0; }
        catch (InvalidOperationException) { return false; }
    }

    [GeneratedRegex(@"\b(?:L|LibraryWords)\.Say(?<count>Count)?\(\s*""(?<key>[A-Za-z]+)""(?!\s*\+)")]
    private static partial Regex ByName();

    [GeneratedRegex(@"\bSay(?<count>Count)?\(\s*""(?<key>[A-Za-z]+)""(?!\s*\+)")]
    private static partial Regex InClass();
}
