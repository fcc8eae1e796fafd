using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Slantwise.Records.Tests.Checks;

public sealed partial class FindingWordsTests
{
    private static readonly Dictionary<string, string> English = Words("FindingWords.resx");
    private static readonly Dictionary<string, string> Spanish = Words("FindingWords.es.resx");
    private static readonly string Source = string.Join('\n', Files("src", "*.cs").Select(File.ReadAllText));

    [Fact]
    public void Keys_InBothLanguages_AreTheSame() => Assert.Equal(English.Keys.Order(), Spanish.Keys.Order());

    [Fact]
    public void Gaps_InBothLanguages_AreTheSame() =>
        Assert.All(English, word => Assert.Equal(Gaps(word.Value), Gaps(Spanish[word.Key])));

    [Fact]
    public void Keys_OfFindingsInTheSource_HaveASentence()
    {
        var used = FindingKey().Matches(Source).Select(m => m.Groups[1].Value).ToHashSet();
        Assert.True(used.Count > 50, "The scan must see the findings of the source.");
        Assert.All(used, key => Assert.True(English.ContainsKey(key), key));
    }

    [Fact]
    public void Keys_InTheResources_AreUsedBySomeCode() =>
        Assert.All(English.Keys, key => Assert.True(Source.Contains($"\"{key}\"", StringComparison.Ordinal), key));

    private static string Gaps(string sentence) => string.Join(',', Gap().Matches(sentence).Select(m => m.Groups[1].Value).Distinct().Order());

    private static Dictionary<string, string> Words(string file) => XDocument.Load(Path.Combine(Checkout.Root, "src/Records/Words", file))
        .Descendants("data").ToDictionary(d => d.Attribute("name")!.Value, d => d.Element("value")!.Value);

    private static IEnumerable<string> Files(string folder, string pattern) =>
        Directory.EnumerateFiles(Path.Combine(Checkout.Root, folder), pattern, SearchOption.AllDirectories)
            .Where(f => !f.Replace('\\', '/').Split('/').Any(part => part is "bin" or "obj" or "node_modules"));

    [GeneratedRegex(@"(?:Finding\.(?:Refused|Flagged)\(|new Finding\([^,()]+, |Refuse(?:<\w+>)?\(|FindingWords\.Text\()""([A-Z]\w+)""")]
    private static partial Regex FindingKey();

    [GeneratedRegex(@"\{(\d+)[^}]*\}")]
    private static partial Regex Gap();
}
