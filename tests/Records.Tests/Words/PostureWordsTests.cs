using System.Text.RegularExpressions;
using System.Xml.Linq;
using Slantwise.Engines.Mechanics;

namespace Slantwise.Records.Tests.Words;

public sealed partial class PostureWordsTests
{
    private static readonly Dictionary<string, string> English = Words("PostureWords.resx");
    private static readonly Dictionary<string, string> Spanish = Words("PostureWords.es.resx");

    [Fact]
    public void Keys_InBothLanguages_AreTheSame() => Assert.Equal(English.Keys.Order(), Spanish.Keys.Order());

    [Fact]
    public void Gaps_InBothLanguages_AreTheSame() => Assert.All(English, word => Assert.Equal(Gaps(word.Value), Gaps(Spanish[word.Key])));

    [Fact]
    public void Parts_OfEveryContact_HaveANameOnEachSide()
    {
        var expected = Enum.GetValues<ContactPart>().SelectMany(part => SegmentFigures.IsPaired(ContactPatch.Of(part).Segment)
            ? new[] { $"Part{part}Left", $"Part{part}Right", $"Part{part}Both" }
            : [$"Part{part}Middle"]);
        Assert.Equal(expected.Order(), English.Keys.Where(k => k.StartsWith("Part", StringComparison.Ordinal)).Order());
    }

    [Fact]
    public void Keys_PutTogetherByTheRules_AreAllThereAndNoOthers()
    {
        var source = string.Join('\n', Directory.EnumerateFiles(Path.Combine(Checkout.Root, "src/Records/Postures/Figures"), "*.cs", SearchOption.AllDirectories).Select(File.ReadAllText));
        string[] arms = ["Overhead", "Out", "OutUp", "OutDown", "Front", "Behind", "Down", "Hips", "Back", "Knees", "Shins"];
        var composed = arms.SelectMany(how => new[] { "Arms" + how, "Arm" + how })
            .Concat(new[] { "Leg", "Knee", "Foot", "Arm" }.SelectMany(limb => new[] { limb + "Left", limb + "Right" }))
            .Concat(new[] { "LegSide", "LegBehind", "LegFront" }.SelectMany(leg => new[] { leg, leg + "Hip", leg + "High" }))
            .Append("ArmUp").ToHashSet();
        Assert.All(composed, key => Assert.True(English.ContainsKey(key), key));
        // What the rules for arms can answer is what has words.
        Assert.All(arms, how => Assert.Contains($"\"{how}\"", source));
        Assert.All(English.Keys.Where(k => !k.StartsWith("Part", StringComparison.Ordinal) && !composed.Contains(k)), key => Assert.True(source.Contains($"\"{key}\"", StringComparison.Ordinal), key));
    }

    private static string Gaps(string words) => string.Join(',', Gap().Matches(words).Select(m => m.Value).Distinct().Order());

    private static Dictionary<string, string> Words(string file) => XDocument.Load(Path.Combine(Checkout.Root, "src/Records/Words", file))
        .Descendants("data").ToDictionary(d => d.Attribute("name")!.Value, d => d.Element("value")!.Value);

    [GeneratedRegex(@"\{\d+\}")]
    private static partial Regex Gap();
}
