using System.Text.RegularExpressions;
using System.Xml.Linq;
using Slantwise.Desk.Pages.Safety;
using Slantwise.Desk.Words;
using Slantwise.Records.Safety;

namespace Slantwise.Surface.Tests.Desk.Safety;

/// <summary>A page that asks for words that are not there fails only when somebody opens it: so the sources are read here.</summary>
public sealed partial class SafetyWordsTests
{
    [Fact]
    public void Say_EveryKeyNamedInThePages_HasWordsAndNoneIsLeftOver()
    {
        HashSet<string> keys =
        [
            .. Enum.GetNames<IncidentKind>().Select(k => "About" + k), .. Enum.GetNames<IncidentSpan>().Select(s => "Span" + s),
            .. Enum.GetNames<RestrictionChangeKind>().SelectMany(k => new[] { $"Soon{k}One", $"Soon{k}Many" }), "AsPrintedLater", "AsPrintedNote", "ChangeEntry", "LogOne",
        ];
        foreach (var file in Directory.EnumerateFiles(Path.Combine(Root(), "src", "Desk", "Pages", "Safety"), "*.razor"))
        {
            foreach (Match call in Call().Matches(File.ReadAllText(file)))
            {
                var key = call.Groups["key"].Value;
                keys.UnionWith(call.Groups["count"].Success ? [key + "One", key + "Many"] : [key]);
            }
        }
        Assert.True(keys.Count > 60, $"Only {keys.Count} keys were found: the pages are no longer read.");
        Assert.Equal(keys.Order(), Words("SafetyWords.resx").Keys.Order());
    }

    [Fact]
    public void Words_InBothLanguages_HaveTheSameKeysAndGaps()
    {
        var (english, spanish) = (Words("SafetyWords.resx"), Words("SafetyWords.es.resx"));
        Assert.Equal(english.Keys.Order(), spanish.Keys.Order());
        Assert.All(english, word => Assert.Equal(Gap().Matches(word.Value).Select(m => m.Value).Distinct().Order(), Gap().Matches(spanish[word.Key]).Select(m => m.Value).Distinct().Order()));
    }

    [Fact]
    public void Say_UnknownKey_Throws() => Assert.Throws<InvalidOperationException>(() => SafetyWords.Say("NoSuchKey"));

    private static Dictionary<string, string> Words(string file) => XDocument.Load(Path.Combine(Root(), "src", "Desk", "Words", file))
        .Descendants("data").ToDictionary(d => d.Attribute("name")!.Value, d => d.Element("value")!.Value);

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Slantwise.slnx"))) folder = folder.Parent!;
        return folder.FullName;
    }

    [GeneratedRegex(@"\bL\.Say(?<count>Count)?\(\s*""(?<key>[A-Za-z]+)""(?!\s*\+)")]
    private static partial Regex Call();

    [GeneratedRegex(@"\{\d+\}")]
    private static partial Regex Gap();
}
