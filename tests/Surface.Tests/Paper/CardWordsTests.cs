using System.Collections;
using System.Globalization;
using System.Resources;
using System.Text.RegularExpressions;
using Slantwise.Paper;

namespace Slantwise.Surface.Tests.Paper;

public partial class CardWordsTests
{
    private static readonly ResourceManager Words = new("Slantwise.Paper.Words.CardWords", typeof(TaskSheetPages).Assembly);

    [Fact]
    public void Words_InSpanish_AreTheSameWithTheSameGaps()
    {
        var (english, spanish) = (Of(""), Of("es"));
        Assert.Equal(english.Keys.Order(), spanish.Keys.Order());
        Assert.All(english.Keys, key => Assert.Equal(Gaps(english[key]), Gaps(spanish[key])));
    }

    [Fact]
    public void Words_InBothLanguages_HaveGlyphs() =>
        Assert.All(Of("").Values.Concat(Of("es").Values), text => Assert.True(PaperFonts.Has(text), text));

    private static Dictionary<string, string> Of(string language) => Words
        .GetResourceSet(CultureInfo.GetCultureInfo(language), createIfNotExists: true, tryParents: false)!
        .Cast<DictionaryEntry>().ToDictionary(e => (string)e.Key, e => (string)e.Value!);

    private static IEnumerable<string> Gaps(string sentence) => Gap().Matches(sentence).Select(m => m.Value).Order();

    [GeneratedRegex(@"\{\d\}")]
    private static partial Regex Gap();
}
