using System.Text.RegularExpressions;
using System.Xml.Linq;
using Slantwise.Records.Safety;
using Slantwise.Records.Schools;
using Slantwise.Records.Tasks.Designs;

namespace Slantwise.Records.Tests.Safety;

public sealed partial class RiskWordsTests
{
    private static readonly Dictionary<string, string> English = Words("RiskWords.resx");
    private static readonly Dictionary<string, string> Spanish = Words("RiskWords.es.resx");

    [Fact]
    public void Keys_InBothLanguages_AreTheSameAndDiffer()
    {
        Assert.Equal(English.Keys.Order(), Spanish.Keys.Order());
        Assert.All(English, word => Assert.Equal(Gaps(word.Value), Gaps(Spanish[word.Key])));
        Assert.Equal(["Earlier"], English.Where(w => w.Value == Spanish[w.Key]).Select(w => w.Key));
    }

    [Fact]
    public void Keys_MadeOfNames_HaveWords()
    {
        string[] keys =
        [
            .. All<RiskReason>("Reason"), .. All<RiskLevel>("Level"), .. All<RiskLevel>("LevelAbout"), .. All<IncidentKind>("Kind"), .. All<SafetyCondition>("Condition"),
            .. All<PolicyChoice>("Spotting"), .. Enum.GetNames<RiskReason>().Where(r => r != nameof(RiskReason.HeadWeight)).Select(r => "Control" + r),
            .. Enum.GetNames<RiskGapKind>().Select(g => "Gap" + g + (g == nameof(RiskGapKind.PupilsWithoutLevel) ? "One" : "")),
            .. Enum.GetNames<MatShare>().SelectMany(s => new[] { $"ControlMats{s}One", $"ControlMats{s}Many" }),
        ];
        Assert.All(keys, key => Assert.True(English.ContainsKey(key), key));
    }

    [Fact]
    public void Text_UnknownKey_Throws() => Assert.Throws<InvalidOperationException>(() => RiskWords.Text("NoSuchKey", RiskLesson.English));

    private static IEnumerable<string> All<T>(string start)
        where T : struct, Enum => Enum.GetNames<T>().Select(name => start + name);

    private static string Gaps(string sentence) => string.Join(',', Gap().Matches(sentence).Select(m => m.Groups[1].Value).Distinct().Order());

    private static Dictionary<string, string> Words(string file) => XDocument.Load(Path.Combine(Checkout.Root, "src/Records/Safety", file))
        .Descendants("data").ToDictionary(d => d.Attribute("name")!.Value, d => d.Element("value")!.Value);

    [GeneratedRegex(@"\{(\d+)[^}]*\}")]
    private static partial Regex Gap();
}
