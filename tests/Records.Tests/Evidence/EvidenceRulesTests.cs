using System.Globalization;
using System.Resources;
using System.Text.RegularExpressions;
using Slantwise.Engines.Statistics;
using Slantwise.Records.Evidence;
using Slantwise.Records.Words;

namespace Slantwise.Records.Tests.Evidence;

public sealed partial class EvidenceRulesTests
{
    private static readonly ResourceManager Texts = new(typeof(QuestionWords));

    private static Dictionary<string, string> Words(string language) => Texts
        .GetResourceSet(CultureInfo.GetCultureInfo(language), true, true)!
        .Cast<System.Collections.DictionaryEntry>()
        .ToDictionary(e => (string)e.Key, e => (string)e.Value!);

    [Fact]
    public void Evidence_EveryProperty_RanksAndGradesNothing()
    {
        var names = typeof(LessonEvidence).Assembly.GetTypes()
            .Where(t => t.Namespace == typeof(LessonEvidence).Namespace)
            .SelectMany(t => t.GetProperties().Select(p => p.Name).Append(t.Name))
            .ToList();
        Assert.Contains(nameof(LessonEvidence.Conferences), names);
        Assert.DoesNotContain(names, n => Ranking().IsMatch(n));
    }

    [Theory]
    [InlineData("LevelRank", true)]
    [InlineData("ScoreCount", true)]
    [InlineData("Grades", true)]
    [InlineData("BestHold", false)]
    public void Ranking_OfAName_SeesTheWord(string name, bool expected) => Assert.Equal(expected, Ranking().IsMatch(name));

    [Fact]
    public void Questions_InBothLanguages_AskAndAdviseNothing()
    {
        var en = Words("en").Where(w => w.Key.StartsWith("Question", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(en);
        Assert.All(en, w => Assert.EndsWith("?", w.Value));
        Assert.DoesNotContain(en, w => Advice().IsMatch(w.Value));
        var es = Words("es").Where(w => w.Key.StartsWith("Question", StringComparison.Ordinal)).ToList();
        Assert.All(es, w => Assert.EndsWith("?", w.Value));
        Assert.DoesNotContain(es, w => AdviceInSpanish().IsMatch(w.Value));
    }

    [Fact]
    public void Words_OfEveryReason_HaveTheirQuestionAndSpanish()
    {
        var (en, es) = (Words("en"), Words("es"));
        Assert.Equal(en.Keys.Order(), es.Keys.Order());
        foreach (var key in en.Keys.Where(k => k.StartsWith("Reason", StringComparison.Ordinal)))
            Assert.Contains("Question" + key["Reason".Length..], en.Keys);
        Assert.DoesNotContain(en, w => es[w.Key] == w.Value);
    }

    [Fact]
    public void Words_OfEveryPattern_AreThere()
    {
        foreach (var pattern in Enum.GetValues<DecisionPattern>())
            Assert.NotEmpty(QuestionWords.Text("Pattern" + pattern, CultureInfo.GetCultureInfo("en")));
    }

    [Fact]
    public void Text_UnknownKey_Throws() =>
        Assert.Throws<InvalidOperationException>(() => QuestionWords.Text("NoSuchSentence", CultureInfo.InvariantCulture));

    [GeneratedRegex("Rank|Score|Grade|Rating|League|Leader")]
    private static partial Regex Ranking();

    [GeneratedRegex(@"\b(good|bad|better|best|well done|should|must|try a|wrong|right|harder|easier|higher|lower)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Advice();

    [GeneratedRegex(@"\b(bien|mal|mejor|peor|debes|deberías|tienes que|correcto|incorrecto|más difícil|más fácil)\b", RegexOptions.IgnoreCase)]
    private static partial Regex AdviceInSpanish();
}
